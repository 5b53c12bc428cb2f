import type { CellValue } from "../../src/measure/cell-value";
import { alcoholFromCell, alcoholUnitNamed } from "../../src/measure/alcohol";

describe("an amount with its unit", () => {
  test.each<[cell: CellValue, unit: string | undefined, amount: number, named: "pt" | "oz" | "L"]>([
    [48, "oz", 48, "oz"],
    [3, "pt", 3, "pt"],
    [1.4, "L", 1.4, "L"],
    [1400, "mL", 1.4, "L"],
    ["48 oz", undefined, 48, "oz"],
    ["48oz", undefined, 48, "oz"],
    ["48 fl. oz.", undefined, 48, "oz"],
    ["48 fluid ounces", undefined, 48, "oz"],
    ["2 1/2 pt", undefined, 2.5, "pt"],
    ["2½ pints", undefined, 2.5, "pt"],
    ["1.4 L", undefined, 1.4, "L"],
    ["1.4 litres", undefined, 1.4, "L"],
    ["1400 ml", undefined, 1.4, "L"],
    ["1400 cc", undefined, 1.4, "L"],
    ["3 pt", "oz", 3, "pt"],
    ["48", "oz", 48, "oz"],
    ["0", undefined, 0, "pt"],
    [0, undefined, 0, "pt"],
    [0, "oz", 0, "oz"],
    ["3 pt IPA", undefined, 3, "pt"],
    ["48 oz of isopropyl alcohol", undefined, 48, "oz"],
    ["two pints", undefined, 2, "pt"],
    ["3 pintas de alcohol", undefined, 3, "pt"],
    ["no alcohol", "oz", 0, "pt"],
    ["ninguno", undefined, 0, "pt"],
    [2.4, "L", 2.4, "L"],
    // A US quart is two pints; both exact by definition.
    ["1 qt", undefined, 2, "pt"],
    [1.5, "quarts", 3, "pt"],
    ["70 cl", undefined, 0.7, "L"],
    [7, "dL", 0.7, "L"],
  ])("%j in %s: %d %s", (cell, unit, amount, named) => {
    expect(alcoholFromCell(cell, unit)).toEqual({ amount, unit: named });
  });

  test("with a decimal comma where the workbook writes it", () => {
    expect(alcoholFromCell("1,4 L", undefined, ",")).toEqual({ amount: 1.4, unit: "L" });
  });
});

test.each<[CellValue]>([[null], [""], ["-"], ["n/a"]])("%j is blank", (cell) => {
  expect(alcoholFromCell(cell, "oz")).toBeUndefined();
});

describe("a unit is never guessed", () => {
  test.each<[cell: CellValue, unit: string | undefined, id: string]>([
    [48, undefined, "alcohol-has-no-unit"],
    [48, "", "alcohol-has-no-unit"],
    ["48", undefined, "alcohol-has-no-unit"],
    [3, "cups", "alcohol-unit-unknown"],
    ["3 gal", "oz", "alcohol-unit-unknown"],
    ["48 oz 2", undefined, "alcohol-not-an-amount"],
    ["some", "oz", "alcohol-not-an-amount"],
    ["alcohol", "oz", "alcohol-not-an-amount"],
    [1400, "L", "two-ways"],
    ["2-3 pt", undefined, "two-ways"],
    [true, "oz", "alcohol-not-an-amount"],
    ["1,400 L", undefined, "comma-is-unclear"],
    [{ error: "#N/A" }, "oz", "cell-error"],
  ])("%j in %j: %s", (cell, unit, id) => {
    expect(alcoholFromCell(cell, unit)).toMatchObject({ id });
  });
});

test.each([
  ["OZ", "oz"],
  ["fl.oz", "oz"],
  ["Pints", "pt"],
  ["US pt", "pt"],
  [" litre ", "L"],
  ["cm³", "mL"],
  ["gal", undefined],
  ["quart", "qt"],
  ["cl", "cL"],
  ["imp pt", undefined],
])("the word %j names %s", (word, unit) => {
  expect(alcoholUnitNamed(word)).toBe(unit);
});
