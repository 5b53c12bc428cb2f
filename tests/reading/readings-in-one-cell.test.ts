import { checkTable } from "../../src/fieldsheet/check-table";
import type { CheckResult } from "../../src/fieldsheet/check-result";
import type { CellValue } from "../../src/measure/cell-value";
import { isIssue } from "../../src/measure/issue";

function check(headers: CellValue[], rows: CellValue[][]): CheckResult {
  const checked = checkTable({ headers, rows });
  if (isIssue(checked)) throw new Error(checked.id);
  return checked;
}

const HEADERS = ["Load", "Readings (%)", "Alcohol (pt)", "Air"];
const testsOf = ({ results }: CheckResult) => results.map(({ state, air }) => [state, air]);

test("readings that share a cell are read one by one, and marked in that cell", () => {
  const checked = check(HEADERS, [
    ["A", "5.25/5.25", 2, 5.25],
    ["B", "6.0/5.5/5.5", 2, 5.5],
    ["C", "7,25 / 7,25", 3, 7],
    ["D", "6.5/", 2, null],
    ["E", "6.5/5.5", 2, 6],
  ]);
  // Less 0.3 for 3 pt, to the nearest quarter (ASTM C173, from memory).
  expect(testsOf(checked)).toEqual([
    ["valid", 5.25],
    ["valid", 5.5],
    ["valid", 7],
    ["incomplete", undefined],
    ["incomplete", undefined],
  ]);
  const { reading } = checked;
  expect(reading.columns.second).toMatchObject({ index: 1, header: "Readings (%)" });
  expect(reading.placeOf(1, "third")).toEqual({ row: 2, column: 1 });
  expect(reading.recognised).toHaveLength(HEADERS.length);
});

test.each<[what: string, headers: CellValue[], cells: CellValue[]]>([
  ["fractions", ["Load", "Reading (%)"], ["5 1/2", "1/2", "6 1/4"]],
  ["days", ["Load", "Date of reading"], ["5/6", "5/7", "5/8"]],
  ["one reading", ["Load", "Reading (%)"], ["5.5", "6", "5.75/6"]],
  [
    "beside other readings",
    ["Load", "1st reading", "2nd reading"],
    ["5.5/5.5", "6.5/6.5", "6.0/6.0"],
  ],
])("%s are left as they are", (_, headers, cells) => {
  const { reading } = check(
    [...headers, "First roll reading", "Alcohol (pt)"],
    cells.map((cell, i) => [`L-${i}`, cell, ...headers.slice(2).map(() => 5), 5.5, 2]),
  );
  expect(reading.recognised.every(({ index }) => index < headers.length + 2)).toBe(true);
  expect(reading.columns.third).toBeUndefined();
});
