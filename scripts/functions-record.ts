import { readdirSync } from "node:fs";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";

/** Where the record of the worksheet functions is kept. */
export const RECORD = "tests/functions/functions-record.json";

/** What workbooks out there rely on in one worksheet function. */
export interface RecordedFunction {
  readonly id: string;
  readonly name: string;
  /** Type of the result, such as `any[][]`. */
  readonly result: string;
  /** In order: `cups?: any[][]` is an optional argument. */
  readonly parameters: readonly string[];
}

interface Described {
  readonly name: string;
  readonly type?: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
  readonly repeating?: boolean;
}

/** The files that declare worksheet functions. */
export function functionFiles(): string[] {
  const files = readdirSync("src/functions").filter((name) => name.endsWith(".ts"));
  return files.sort().map((name) => `src/functions/${name}`);
}

/** The worksheet functions as they are declared now, by id. */
export async function declaredFunctions(): Promise<RecordedFunction[]> {
  const { metadataJson, errors } = await generateCustomFunctionsMetadata(functionFiles());
  if (errors.length > 0) throw new Error(errors.join("\n"));
  const { functions } = JSON.parse(metadataJson) as {
    functions: { id: string; name: string; result: Described; parameters: Described[] }[];
  };
  return functions
    .map(({ id, name, result, parameters }) => ({
      id,
      name,
      result: typeOf(result),
      parameters: parameters.map(
        (parameter) =>
          `${parameter.repeating ? "..." : ""}${parameter.name}${parameter.optional ? "?" : ""}: ${typeOf(parameter)}`,
      ),
    }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

function typeOf({ type = "any", dimensionality }: Omit<Described, "name">): string {
  return dimensionality === "matrix" ? `${type}[][]` : type;
}

/**
 * What would break workbooks that use the recorded functions. Ids, names, types and the order of
 * arguments are for ever: workbooks store them. A function may be added, and an optional argument at
 * the end.
 *
 * @returns One sentence for each break; none when the change is additive.
 */
export function breakingChanges(
  recorded: readonly RecordedFunction[],
  declared: readonly RecordedFunction[],
): string[] {
  return recorded.flatMap((was) => {
    const is = declared.find(({ id }) => id === was.id);
    if (!is) return [`${was.id} is gone.`];
    const breaks: string[] = [];
    if (is.name !== was.name) breaks.push(`${was.id} is now named ${is.name}.`);
    if (is.result !== was.result) breaks.push(`${was.id} now gives ${is.result}.`);
    was.parameters.forEach((parameter, i) => {
      const now = is.parameters[i] ?? "gone";
      if (now !== parameter)
        breaks.push(`${was.id}: argument ${i + 1}, ${parameter}, is now ${now}.`);
    });
    for (const added of is.parameters.slice(was.parameters.length)) {
      if (!added.includes("?:"))
        breaks.push(`${was.id}: the new argument ${added} is not optional.`);
    }
    return breaks;
  });
}
