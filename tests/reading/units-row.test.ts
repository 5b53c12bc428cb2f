import { isUnitsRow } from "../../src/reading/units-row";
import { readTable } from "../../src/reading/read-table";
import type { CellValue } from "../../src/measure/cell-value";

// Common practice: many laboratories write the units in a row of their own below the headers.
test.each<[row: CellValue[], is: boolean]>([
  [[null, "%", "%", "pt", "%"], true],
  [["No.", "(%)", "(%)", "(oz)", "(min)", "(pcf)"], true],
  [["", "[%]", "[mL]", "J/N"], true],
  [["", "%", "%", "lb/ft³", "hh:mm"], true],
  [[null, "%", null, null], false],
  [["A", "%", "pt", 5.25], false],
  [["S-1", "5 1/4", "pt", "C"], false],
  [["Remarks", "see", "pt", "min", "the driver left early"], false],
  [["oz", "alcohol", "cups", "air", "pt"], false],
  [[null, null], false],
])("%j are units: %p", (row, is) => {
  expect(isUnitsRow(row)).toBe(is);
});

test("the units of the row below the headers are those of the columns", () => {
  const headers = ["Sample", "First reading", "Final reading", "Alcohol", "Settled", "Air"];
  const units = [null, "%", "%", "oz", "s", "%"];
  const { columns, records } = readTable({
    headers,
    rows: [units, ["A", 5.25, 5.25, 48, 90, 5], units, ["B", 5.5, 5.5, 32, 60, 5.5]],
  });
  expect(columns.alcohol).toMatchObject({ unit: "oz", header: "Alcohol" });
  expect(records.map(({ blank }) => blank)).toEqual([true, false, true, false]);
  expect(records[1]!.values.alcohol).toEqual({ amount: 48, unit: "oz" });
  expect(records[1]!.values.settle).toEqual({ value: 1.5 });
});
