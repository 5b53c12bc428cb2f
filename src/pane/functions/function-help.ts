import type { Language } from "../../messages/language";

/** What the help says of a worksheet function: its declaration, and the arguments of an example. */
export interface FunctionHelp {
  /** Without the namespace: "AIR". */
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    readonly optional: boolean;
  }[];
  /** Each as a formula in English has it. */
  readonly example: readonly string[];
}

/** The help in each language. */
export type FunctionHelps = Readonly<Record<Language, readonly FunctionHelp[]>>;

/** What functions.json and examples.json of the build say; nothing where they are not those files. */
export function functionHelpFrom(declared: unknown, examples: unknown): readonly FunctionHelp[] {
  const { functions } = (declared ?? {}) as { functions?: unknown };
  if (!Array.isArray(functions)) return [];
  const known = new Map(Object.entries((examples ?? {}) as Record<string, unknown>));
  return functions.flatMap((one: Partial<Record<keyof FunctionHelp, unknown>>) => {
    const { name, description = "", parameters } = one;
    const example = known.get(String(name));
    if (typeof name !== "string" || !Array.isArray(parameters) || !Array.isArray(example))
      return [];
    return {
      name,
      description: String(description),
      parameters: parameters.map((each: Record<string, unknown>) => ({
        name: String(each.name),
        description: String(each.description ?? ""),
        optional: each.optional === true,
      })),
      example: example.map(String),
    };
  });
}
