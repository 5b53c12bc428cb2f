import * as z from "zod";

z.config({ jitless: true });

const parameter = z.object({
  name: z.string(),
  description: z.string().default(""),
  optional: z.boolean().default(false),
  repeating: z.boolean().default(false),
});

const declaration = z.object({
  id: z.string(),
  name: z.string(),
  description: z.string().default(""),
  parameters: z.array(parameter),
});

const functionsFile = z.object({ functions: z.array(declaration).min(1) });

const examplesFile = z.record(z.string(), z.array(z.string()));

/** What functions.json says about a worksheet function. */
export type Declaration = z.infer<typeof declaration>;

/** Reads functions.json as the build writes it. Throws where it is not that file. */
export function declarationsFrom(json: unknown): Declaration[] {
  return functionsFile.parse(json).functions;
}

/** Reads examples.json: by the name of a function, the arguments of an example. */
export function examplesFrom(json: unknown): Readonly<Record<string, readonly string[]>> {
  return examplesFile.parse(json);
}
