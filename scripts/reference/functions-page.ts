import { readFileSync } from "node:fs";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { examplesIn } from "../../build/function-examples.mjs";
import { functionFiles } from "../functions-record";
import { page, table } from "./markdown";

/** A worksheet function as its metadata describes it. */
export interface Described {
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    readonly optional?: boolean;
  }[];
}

const NAMESPACE = "FRESH";

/** What stands on these grounds only; each is named in the source where it is used. */
const FROM_MEMORY = [
  "ASTM C173: a cup is 1.00 % of the bowl, the result is reported to the nearest 0.25 %, the rows of the correction table below 2 pt subtract nothing, and the table is for a 0.075 ft³ bowl with a top section 1.2 times as large. The rows from 2 pt on were read in a meter maker's manual (2019); between rows the correction is interpolated, which was not read.",
  "Precision of the methods, and so every chance, guarded limit and agreement that rests on it; that of ASTM C173 is the least sure, and that of ASTM C231 is for meters of Type A and air up to 7 %. A deviation of your own can be given instead.",
  "Specified air of CSA A23.1 and EN 206, the formulas for wet-sieved samples, the calculated oven-dry density of ASTM C567, water density of ASTM C29, and the evaporation formula in US units.",
  "Specified air of ACI 318-19 was read in two copies that agree, not in the code itself. ACI 318-25 was not looked at, and its table may differ.",
];

/** The reference page of the worksheet functions, from their declarations. */
export async function functionsPage(): Promise<string> {
  const areas = await Promise.all(functionFiles().map(areaSections));
  return page(
    "# Worksheet functions",
    `Every function of the namespace \`${NAMESPACE}\`. Arguments in brackets may be left out. Where nothing else is said, an argument is a value or a range; ranges of one size give a result of that size, and a single value, row or column stands for all. A blank row gives a blank. A cell that cannot be computed shows \`#VALUE!\`, and a result that does not exist (yet) \`#N/A\`, each with a sentence that says why.`,
    "In the examples, `{1,2;3,4}` stands for a range: a comma parts cells beside each other, a semicolon rows. Results of several cells are written in the same way. Each result was worked out by hand or comes from the source beside it, and the tests run each formula.",
    "Results support, and never replace, the project specification, the local codes and the judgement of the licensed engineer and the certified technician.",
    ...areas.flat(),
    "## What is from memory",
    "These values are known but were not read for this project. Compare them with the standard in force before you rely on them.",
    FROM_MEMORY.map((line) => `- ${line}`).join("\n"),
  );
}

async function areaSections(file: string): Promise<string[]> {
  const { metadataJson, errors } = await generateCustomFunctionsMetadata([file]);
  if (errors.length > 0) throw new Error(errors.join("\n"));
  const { functions } = JSON.parse(metadataJson) as { functions: Described[] };
  const source = readFileSync(file, "utf8");
  const returns = returnsByName(source);
  const examples = examplesIn(source);
  return [
    `## ${titleOf(file)}`,
    ...functions.flatMap((fn) => section(fn, returns.get(fn.name)!, examples.get(fn.name)!)),
  ];
}

function section(
  { name, description, parameters }: Described,
  returns: string,
  examples: readonly { formula: string; gives: string; from: string }[],
): string[] {
  const shown = parameters.map((parameter) =>
    parameter.optional ? `[${parameter.name}]` : parameter.name,
  );
  const rows = parameters.map((parameter, i) => [`\`${shown[i]}\``, parameter.description]);
  return [
    `### ${NAMESPACE}.${name}`,
    `\`${NAMESPACE}.${name}(${shown.join(", ")})\``,
    description,
    table(["argument", "what it is"], rows),
    `Gives: ${returns}`,
    table(
      ["example", "gives", "worked out from"],
      examples.map(({ formula, gives, from }) => [`\`${formula}\``, `\`${gives}\``, from]),
    ),
  ];
}

/** The @returns of each declaration, which the metadata leaves out. */
function returnsByName(source: string): Map<string, string> {
  const comments = source.matchAll(/@customfunction (\S+)[^]*?@returns ([^\n]*)/g);
  return new Map([...comments].map((match) => [match[1]!, match[2]!]));
}

function titleOf(file: string): string {
  const words = file.split("/").at(-1)!.replace(".ts", "").replaceAll("-", " ");
  return words.replace(/^./, (letter) => letter.toUpperCase());
}
