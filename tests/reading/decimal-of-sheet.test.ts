import { isIssue } from "../../src/measure/issue";
import { readTable } from "../../src/reading/read-table";
import type { CellValue } from "../../src/measure/cell-value";
import type { DecimalMark } from "../../src/measure/number-from-cell";

const HEADERS = [
  "Test",
  "First reading",
  "Final reading",
  "Alcohol (mL)",
  "Density (kg/m³)",
  "Time",
];

/** Alcohol in litres and density of the first test, or the sentence that says why not. */
function read(row: readonly CellValue[], decimal: DecimalMark = ".") {
  const { records } = readTable({ headers: HEADERS, rows: [row] }, { decimal });
  const { values, unreadable } = records[0]!;
  const alcohol = unreadable.alcohol ?? values.alcohol;
  const density = unreadable.density ?? values.density;
  return [
    isIssue(alcohol) ? alcohol.id : (alcohol as { amount: number }).amount,
    isIssue(density) ? density.id : density,
  ];
}

// Common practice: where decimals are written with one sign, thousands are set off by the other.
test.each<[what: string, row: CellValue[], decimal: DecimalMark, read: (number | string)[]]>([
  ["commas elsewhere", [1, "5,25", "5,25", "1.250", "1.840", null], ".", [1.25, 1840]],
  ["points elsewhere", [1, "5.25", "5.25", "1,250", "1,840", null], ".", [1.25, 1840]],
  ["a comma behind", [1, 5, 5, "1.250,5", "1.840,0", null], ".", [1.2505, 1840]],
  ["a point behind", [1, 5, 5, "1,250.5", "1,840.0", null], ".", [1.2505, 1840]],
  ["both signs", [1, "5,25", "5.25", "1,250", 1840, null], ".", ["comma-is-unclear", 1840]],
  ["nothing elsewhere", [1, 5, 5, "1,250", 1840, null], ".", ["comma-is-unclear", 1840]],
  ["a time with a point", [1, 5, 5, "1,250", 1840, "7.30"], ".", ["comma-is-unclear", 1840]],
  ["a workbook of commas", [1, 5, 5, "1.250", 1840, null], ",", ["point-is-unclear", 1840]],
  ["commas in such", [1, "5,25", 5, "1.250", 1840, null], ",", [1.25, 1840]],
])("thousands with %s: %j", (_, row, decimal, expected) => {
  expect(read(row, decimal)).toEqual(expected);
});
