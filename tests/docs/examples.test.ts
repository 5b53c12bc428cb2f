import { readdirSync, readFileSync } from "node:fs";
import { argumentsIn, examplesIn } from "../../build/function-examples.mjs";
import { functionFiles } from "../../scripts/functions-record";
import type { SampleSheet, Value } from "../../scripts/samples/sheet";
import { expectAsPrinted } from "../check-values/worked";
import recorded from "../functions/functions-record.json";
import { bundledEngine } from "../samples/bundled-engine";

const { calculated, sentences, worksheetFunctions } = bundledEngine();

const byFunction = new Map(
  functionFiles().flatMap((file) => [...examplesIn(readFileSync(file, "utf8"))]),
);
const ofFunctions = [...byFunction.values()].flat();

/** A row of a table in a page: a formula, and what it gives before any words about it. */
const ROW =
  /^\| `(=[^`]*FRESH\.[^`]*)` *\| *`?("[^"]*"|#[A-Z\d/]+[!?]?|-?\d+(?:\.\d+)?)`?(.*)\|$/gm;

// These show the examples of the functions themselves; tests/docs/reference.test.ts.
const OF_FUNCTIONS = ["functions.md", "funciones.md"];
const pages = readdirSync("docs").filter(
  (name) => name.endsWith(".md") && !OF_FUNCTIONS.includes(name),
);
const inPages = ["README.md", ...pages.map((name) => `docs/${name}`)].flatMap((page) =>
  [...readFileSync(page, "utf8").replaceAll("\r", "").matchAll(ROW)].map(
    ([, formula, gives, words]) => ({
      formula: formula!,
      gives: gives!,
      words: words!,
      from: page,
    }),
  ),
);

/** Rows of cells from their text: `1, "a"; #N/A, TRUE`. */
function cellsIn(text: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, cell, separator] of text.matchAll(/("[^"]*"|[^,;]+)(;)? *,? */g)) {
    rows.at(-1)!.push(cell!);
    if (separator) rows.push([]);
  }
  return rows;
}

function expectCell(value: unknown, stated: string): void {
  const number = Number(stated);
  if (stated.startsWith('"')) expect(value ?? "").toBe(stated.slice(1, -1));
  else if (stated.startsWith("#")) expect(value).toBe(stated);
  else if (/^(TRUE|FALSE)$/.test(stated))
    expect(value).toBe(stated === "TRUE" ? 1 : 0); // as the spreadsheet keeps it
  else if (Number.isInteger(number) && !stated.includes(".")) expect(value).toBe(number);
  else expectAsPrinted(value, stated);
}

const examples = [...ofFunctions, ...inPages];
const WIDTH = 26;
const shown = new Map<string, { cells: readonly Value[][]; sentence?: string }>();

beforeAll(async () => {
  const sheets = examples.map(({ formula, gives }, i): SampleSheet => {
    const height = cellsIn(gives).length + 1;
    const rows = Array.from({ length: height }, () => Array<null>(WIDTH).fill(null));
    const first = { f: formula, v: null, spill: [height, WIDTH] } as const;
    return {
      name: `Example ${i}`,
      columns: [],
      headerRows: 0,
      wrapped: [],
      rows: [[first, ...rows[0]!.slice(1)], ...rows.slice(1)],
    };
  });
  const results = await calculated(sheets, worksheetFunctions);
  results.forEach(({ name, rows }, i) =>
    shown.set(examples[i]!.formula, {
      cells: rows.map((row) => row.map((cell) => cell?.v ?? "")),
      sentence: sentences.about({ sheetId: name, row: 0, column: 0 }),
    }),
  );
});

test.each(examples)("$formula gives $gives ($from)", ({ formula, gives }) => {
  const stated = cellsIn(gives);
  shown
    .get(formula)!
    .cells.forEach((row, r) =>
      row.forEach((value, c) => expectCell(value, stated[r]?.[c] ?? '""')),
    );
});

test.each(
  [
    ...ofFunctions.map(({ formula, gives, from }) => ({ formula, gives, words: from })),
    ...inPages,
  ].filter(({ gives }) => gives.startsWith("#")),
)("$formula says why: $words", ({ formula, words }) => {
  const why = words.replace(/^[\s,:]+/, "").trim();
  expect(why).not.toBe("");
  expect(shown.get(formula)!.sentence?.toLowerCase()).toContain(why);
});

test.each(recorded)(
  "$id has one to three examples, one with every argument",
  ({ id, parameters }) => {
    const examples = byFunction.get(id) ?? [];
    expect(examples.length).toBeGreaterThanOrEqual(1);
    expect(examples.length).toBeLessThanOrEqual(3);
    for (const { formula } of examples) expect(formula.startsWith(`=FRESH.${id}(`)).toBe(true);
    const counts = examples.map(({ formula }) => argumentsIn(formula).length);
    expect(Math.max(...counts)).toBe(parameters.length);
  },
);

test("the front page shows results, and they are among those looked at", () => {
  expect(inPages.filter(({ from }) => from === "README.md").length).toBeGreaterThanOrEqual(3);
});
