import { checkBlock, checkTests } from "../../src/fieldsheet/check-table";
import { findingSentence } from "../../src/fieldsheet/finding-sentence";
import type { CellValue } from "../../src/measure/cell-value";
import { isIssue } from "../../src/measure/issue";
import { findTestsIn, tableIn } from "../../src/reading/read-sheet";
import { stackedTables } from "../../src/reading/stacked-tables";
import { BLIND_TABLES } from "./corpus/blind/tables";
import { SECOND_BLIND_TABLES } from "./corpus/blind-second/tables";
import { THIRD_BLIND_TABLES } from "./corpus/blind-third/tables";
import { LANGUAGES } from "./corpus/languages";

/*
 * Sheets with a head: what is specified, the day, the mix, the alcohol stand once above the table. That this is how
 * day's sheets are kept, and that the head holds for all tests below it, is common practice.
 */

type Rows = readonly (readonly CellValue[])[];

/** Rows of any length as a block. */
function block(...rows: Rows): Rows {
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? null));
}

function checked(rows: Rows, options?: Parameters<typeof checkBlock>[1]) {
  const result = checkBlock(rows, options);
  if (isIssue(result)) throw new Error(result.id);
  return result;
}

const said = (rows: Rows) =>
  checked(rows).results.map(({ state, air, specification }) => [air ?? state, specification]);
const rules = (rows: Rows) => checked(rows).findings.map(({ rule }) => rule);

const HEADERS = ["Sample", "First reading", "Second reading", "Alcohol (pt)"];
const TESTS: Rows = [
  ["A", 4.25, 4.25, 2],
  ["B", 6.25, 6.25, 2],
];
const under = (...head: Rows) => block(...head, HEADERS, ...TESTS);

const HELD: Rows = [
  [4.25, "below"],
  [6.25, "within"],
];
const NOT_HELD: Rows = HELD.map(([air]) => [air!, undefined as never]);

test.each<[string, Rows]>([
  ["a specification in one cell", [["Specified air", "6 ± 1.5"]]],
  ["with its label in the same cell", [["Specified air: 6 ± 1.5 %"]]],
  ["without a colon", [["Required air 4.5 - 7.5 %"]]],
  ["a least one", [["Min. air allowed", 4.5]]],
  ["two limits", [["Low limit", 4.5, "High limit", 7.5]]],
  ["a target and its tolerance", [["Target air", 6, "Tolerance", 1.5]]],
  [
    "limits below their labels",
    [
      ["Air limits, min", "Air limits, max"],
      [4.5, 7.5],
    ],
  ],
  ["air with a range", [["Air content", "4.5-7.5"]]],
  ["above a blank row", [["Specified air", "6 ± 1.5"], []]],
  [
    "among other things",
    [
      ["Project:", "North quay", "Date:", "2026-03-14"],
      ["Supplier", "Plant 4", "Specified air:", "6 ± 1.5"],
    ],
  ],
  ["in Spanish", [["Aire especificado", "6 ± 1.5"]]],
  ["in German", [["Sollwert Luft", "6,0 ± 1,5 %"]]],
  ["in French", [["Teneur en air exigée", "4,5 à 7,5 %"]]],
])("limits above the table hold for its tests: %s", (_, head) => {
  expect(said(under(...head))).toEqual(HELD);
  expect(rules(under(...head))).toContain("said-once");
});

test.each<[string, Rows]>([
  ["the specification of a slump", [["Slump, specified", "4 ± 1"]]],
  ["a result", [["Mean air", 6.1]]],
  ["a target alone", [["Target air", 6]]],
  ["a label without a value", [["Specified air:"]]],
  ["a share of one", [["Air limits, min", 0.045, "Air limits, max", 0.075]]],
  ["the least and the most of a day", [["Max air", 6.25, "Min air", 4.25]]],
  [
    "specifications of two mixes",
    [["Mix", "Specified air"], ["LW-1", "6 ± 1.5"], ["LW-2", "5 ± 1"], []],
  ],
])("%s is none", (_, head) => {
  expect(said(under(...head))).toEqual(NOT_HELD);
});

test.each<[string, Rows]>([
  ["in one cell", [["Specified air: 4.5 - 7.5 %"]]],
  ["behind a blank row", [[], ["Specified air", "6 ± 1.5"]]],
  [
    "in two rows",
    [
      ["Low limit", 4.5],
      ["High limit", 7.5],
    ],
  ],
])("limits below the table hold for its tests, and are no test: %s", (_, foot) => {
  const rows = block(HEADERS, ...TESTS, ...foot);
  expect(said(rows).slice(0, 2)).toEqual(HELD);
  expect(checked(rows).results.filter(({ state }) => state !== "")).toHaveLength(2);
});

test.each<[string, Rows]>([
  [
    "a summary",
    [
      ["Mean", 5.25],
      ["Max", 6.25],
      ["Min", 4.25],
    ],
  ],
  [
    "one that names the air",
    [
      ["Max air", 6.25],
      ["Min air", 4.25],
    ],
  ],
])("the least and the most below the table are no limits: %s", (_, foot) => {
  expect(said(block(HEADERS, ...TESTS, ...foot)).slice(0, 2)).toEqual(NOT_HELD);
});

test("limits above go before those below, and a day below is none of the tests'", () => {
  const rows = block(
    ["Specified air", "6 ± 1.5"],
    HEADERS,
    ...TESTS,
    [],
    ["Specified air", "3 ± 1"],
    ["Date:", "2026-03-14"],
  );
  expect(said(rows).slice(0, 2)).toEqual(HELD);
  expect(checked(rows).reading.has("date")).toBe(false);
});

test("limits in columns go before those above", () => {
  const rows = block(
    ["Specified air", "6 ± 1.5"],
    [...HEADERS, "Low", "High"],
    ...TESTS.map((row) => [...row, 4, 6]),
  );
  expect(said(rows)).toEqual([
    [4.25, "within"],
    [6.25, "above"],
  ]);
});

test("limits that are given with the check go before those above", () => {
  const { results } = checked(under(["Specified air", "6 ± 1.5"]), { low: 4, high: 5 });
  expect(results.map(({ specification }) => specification)).toEqual(["within", "above"]);
});

test("what the user calls none of ours is not used", () => {
  const setup = { kept: [{ header: "Specified air", field: "not ours" } as const] };
  const { results } = checked(under(["Specified air", "6 ± 1.5"]), setup);
  expect(results.map(({ specification }) => specification)).toEqual([undefined, undefined]);
});

test("a mix that is named with them has them alone", () => {
  const rows = block(
    ["Mix", "Specified air"],
    ["LW-1", "6 ± 1.5"],
    [...HEADERS, "Mix"],
    ...TESTS.map((row, at) => [...row, at === 0 ? "LW-2" : "lw-1"]),
  );
  expect(said(rows)).toEqual([
    [4.25, undefined],
    [6.25, "within"],
  ]);
});

test("where a slump is measured too, limits that do not name the air are asked about", () => {
  const withSlump = (label: string) =>
    block([label, "6 ± 1.5"], [...HEADERS, "Slump (in)"], ...TESTS.map((row) => [...row, 4]));
  expect(said(withSlump("Spec"))).toEqual(NOT_HELD);
  expect(rules(withSlump("Spec"))).toContain("said-once");
  expect(said(withSlump("Air spec"))).toEqual(HELD);
});

const NO_ALCOHOL: Rows = [
  ["Sample", "First reading", "Second reading"],
  ["A", 6.25, 6.25],
];

/* ASTM C173 Table 1, from memory: 4 pt of alcohol take 0.5 % off, 2 pt nothing. */
test.each<[string, CellValue[], unknown]>([
  ["its amount is corrected for", ["Alcohol per test", "4 pt"], 5.75],
  ["in one cell", ["Alcohol used: 4 pt"], 5.75],
  ["none is corrected for which kind it is", ["Alcohol", "70 % isopropyl"], 6.25],
  ["an amount without a unit is asked about", ["Alcohol", 4], "incomplete"],
  ["nor is it known what else stands there", ["Alcohol on hand", "4 pt"], "incomplete"],
  ["a yes is no amount", ["Alcohol used (pt)", "see log 4"], "incomplete"],
])("alcohol above the table: %s", (_, head, air) => {
  expect(said(block(head, ...NO_ALCOHOL)).map(([is]) => is)).toEqual([air]);
});

test("cups above the table are asked about", () => {
  expect(said(under(["Calibrated cups of water", 1])).map(([is]) => is)).toEqual([
    "incomplete",
    "incomplete",
  ]);
  for (const none of [null, 0])
    expect(said(under(["Calibrated cups of water", none]))).toEqual(NOT_HELD);
});

test("a value leads to its own cell, and is said by its label", () => {
  const rows = under(["Mix:", "LW-3", "Specified air:", "6 ± 1.5"], ["Date", "2026-03-14"]);
  const { reading, findings, columns } = checked(rows);
  expect(reading.placeOf(1, "target")).toEqual({ row: 0, column: 3 });
  expect(reading.placeOf(null, "date")).toEqual({ row: 1, column: 1 });
  expect(reading.cell(1, "mix")).toBe("LW-3");
  const finding = findings.find(({ rule }) => rule === "said-once")!;
  expect(finding.place).toEqual({ row: 0, column: 1 });
  for (const label of ["“Mix", "“Specified air", "“Date"])
    expect(findingSentence(finding, columns)).toContain(label);
});

test("a table below another has the head above its own header", () => {
  const rows = block(
    ["Specified air", "6 ± 1.5"],
    HEADERS,
    ...TESTS,
    [],
    ["Specified air", "3 ± 1"],
    ["Ticket", "1st reading", "2nd reading", "Alcohol (oz)"],
    ["101", 4.25, 4.25, 32],
  );
  const found = findTestsIn(rows);
  if (isIssue(found) || !("layout" in found)) throw new Error("no table");
  const [first, second] = stackedTables(found.layout);
  const parts = [{ ...found, layout: first! }, tableIn(rows, second!)];
  const verdicts = parts.map((part) => {
    const result = checkTests(part);
    return isIssue(result) ? [] : result.results.map(({ specification }) => specification);
  });
  expect(verdicts.map((each) => each.filter(Boolean))).toEqual([["below", "within"], ["above"]]);
});

const TABLES = [
  ...LANGUAGES.flatMap(({ worked, heldOut }) => [...worked, ...heldOut]),
  ...[BLIND_TABLES, SECOND_BLIND_TABLES, THIRD_BLIND_TABLES].flat().flatMap(({ tables }) => tables),
];
/** A third of them each time; EVERY=1 takes all. */
const TRIED = TABLES.filter((_, at) => process.env.EVERY === "1" || at % 3 === 0);
const LIMITS = new Set(["low", "high", "target", "tolerance", "mix"]);

test("on the tables of the corpus, limits above are limits given with the check", () => {
  const other = TRIED.filter(({ headers, rows, expect: fields }) => {
    if (fields.some((field) => LIMITS.has(field))) return false;
    const table = block(...headers, ...rows).map((row) =>
      row.map((cell) => (cell === "" ? null : cell)),
    );
    const given = checkBlock(table, { low: 4.5, high: 7.5 });
    const above = checkBlock(block(["Specified air:", "4.5 - 7.5 %"], [], ...table));
    const verdicts = (result: typeof given) =>
      isIssue(result)
        ? result.id
        : result.results.map(({ state, air, specification }) => [state, air, specification].join());
    return JSON.stringify(verdicts(given)) !== JSON.stringify(verdicts(above));
  });
  expect(other.map(({ name }) => name)).toEqual([]);
});
