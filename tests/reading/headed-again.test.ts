import { checkSheet } from "../../src/command-line/check-sheet";
import { check, findings } from "../../src/functions/field-sheet";
import type { CellValue } from "../../src/measure/cell-value";
import { isHeaderRow, rowHeadedAgain } from "../../src/reading/headed-again";
import { checkedSheet } from "../pane/report/checked-sheet";
import { marksOfFindings } from "../../src/pane/state/marks-of-findings";
import "../functions/custom-functions-runtime";

const HEADERS = ["Sample", "First reading", "Second reading", "Alcohol (pt)", "Air"];
const OUNCES = ["Sample", "First reading", "Second reading", "Alcohol (oz)", "Air"];
const FIRST = ["S-1", 5.25, 5.25, 1, 5.25];
const SECOND = ["S-2", 6.25, 6.25, 48, 6];

test.each<[row: CellValue[], is: boolean]>([
  [OUNCES, true],
  [["Muestra", "Lectura inicial", "Lectura final", "Alcohol"], true],
  [["Sample", "Gauge reading", "Agg. correction factor", null, "Air"], true],
  [["S-2", "6 1/4", "6 1/4", "48 oz", "6"], false],
  [["S-2", "none", "none", "no", "yes"], false],
  [["Remarks: none"], false],
  [FIRST, false],
  [[null, null], false],
])("%j heads a table: %p", (row, is) => {
  expect(isHeaderRow(row)).toBe(is);
});

test.each<[what: string, rows: CellValue[][], at: number]>([
  ["the same header", [FIRST, HEADERS, FIRST], -1],
  ["the same in other letters", [FIRST, HEADERS.map((each) => each.toUpperCase()), FIRST], -1],
  ["the same in other words", [["Sample no.", "Reading 1", "Reading 2", "IPA (pt)", "% air"]], -1],
  ["another unit", [FIRST, OUNCES, SECOND], 1],
  ["another order", [FIRST, [...HEADERS].reverse()], 1],
  ["a column more", [FIRST, [...HEADERS, "Cups"]], 1],
])("below a header %s", (_, rows, at) => {
  expect(rowHeadedAgain(HEADERS, rows)).toBe(at);
});

const SHEET = [HEADERS, FIRST, [], ["Deck 2"], OUNCES, SECOND];

test("what stands below another header is not read, and said where it begins", () => {
  const checked = checkedSheet(SHEET);
  const { results, findings } = checked.result;
  expect(results.map(({ state }) => state)).toEqual(["valid", "", "", "", ""]);
  expect(findings.map(({ rule, weight }) => [rule, weight])).toEqual([["rows-not-read", "error"]]);
  expect(marksOfFindings(checked)).toMatchObject([{ row: 4, column: 0, weight: "error" }]);
});

test("the functions say so in the rows themselves", () => {
  const rows = SHEET.slice(1).map((row) => HEADERS.map((_, at) => row[at] ?? null));
  const said = check([HEADERS], rows);
  expect(said.map(([state]) => state)).toEqual(["valid", "", "", "", ""]);
  expect(said.map(([, , , message]) => /begins with “Sample”/.test(String(message)))).toEqual([
    ...[true, false, false, true, true],
  ]);
  expect(findings([HEADERS], rows)[1]!.slice(0, 4)).toEqual([
    "sheet",
    "",
    "rows-not-read",
    "error",
  ]);
});

// By hand: 6.25 less 0.30 for 48 oz is 5.95, to the nearest 0.25 6.00 (ASTM C173 Table 1, as reproduced in a
// meter maker's manual, 2019).
test("the command line checks the tables one after another", () => {
  const { said } = checkSheet("day.csv", undefined, SHEET, {}, true);
  expect(said.map(({ kind }) => kind)).toEqual(["test", "sheet", "test", "sheet"]);
  expect(said[2]).toMatchObject({ row: 6, sample: "S-2", test: "valid", air: 6 });
  expect(said[3]).toMatchObject({ area: "A5:E6", tests: 1 });
});

test("and says where one begins that holds no tests", () => {
  const slumps = ["Sample", "Slump (in)", "Mix", "Date"];
  const { said } = checkSheet(
    "day.csv",
    undefined,
    [HEADERS, FIRST, FIRST, slumps, ["S-1", 4]],
    {},
    false,
  );
  expect(said[0]).toMatchObject({ kind: "finding", rule: "rows-not-read", cell: "A4", row: 4 });
});

test("thousands of tables below one another are checked one by one", () => {
  const rows = Array.from({ length: 2000 }, (_, i) => [i % 2 ? OUNCES : HEADERS, FIRST]).flat();
  const { said } = checkSheet("log.csv", undefined, rows, {}, false);
  expect(said.filter(({ kind }) => kind === "sheet")).toHaveLength(2000);
  expect(said.at(-1)).toMatchObject({ area: "A3999:E4000", tests: 1 });
});

test("the dates of another table settle nothing for this one", () => {
  const dated = (header: string) => ["Date", ...HEADERS.slice(1, 4), header];
  const block = [dated("Air"), ["3/4/2026", 5, 5, 1, 5], dated("Mix"), ["3/14/2026", 5, 5, 1, "L"]];
  expect(checkedSheet(block).result.results[0]!.unreadable.date?.id).toBe("date-is-unclear");
});
