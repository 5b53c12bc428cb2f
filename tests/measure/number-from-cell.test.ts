import fc from "fast-check";
import type { CellValue } from "../../src/measure/cell-value";
import { numberFromCell, type DecimalMark } from "../../src/measure/number-from-cell";

describe("a number is read where it can be read one way only", () => {
  test.each<[cell: CellValue, number: number]>([
    [5.25, 5.25],
    [0, 0],
    [-1.5, -1.5],
    ["5.25", 5.25],
    [" 5.25 ", 5.25],
    ["5.25 %", 5.25],
    ["5.25%", 5.25],
    ["+5", 5],
    ["-5", -5],
    ["−5", -5],
    [".5", 0.5],
    ["5.", 5],
    ["1e3", 1000],
    ["5 1/4", 5.25],
    ["5-1/4", 5.25],
    ["1/2", 0.5],
    ["-1/2", -0.5],
    ["-5 1/4", -5.25],
    ["5¼", 5.25],
    ["5 ½ %", 5.5],
    ["¾", 0.75],
    ["1,250.5", 1250.5],
    ["12,345,678.9", 12_345_678.9],
  ])("%j: %d", (cell, number) => {
    expect(numberFromCell(cell)).toBe(number);
  });

  test.each<[cell: CellValue, decimal: DecimalMark, number: number]>([
    ["5,25", ",", 5.25],
    ["5,25 %", ",", 5.25],
    ["1,250", ",", 1.25],
    ["5.25", ",", 5.25],
    ["1,250.5", ",", 1250.5],
  ])("%j with decimal mark %j: %d", (cell, decimal, number) => {
    expect(numberFromCell(cell, decimal)).toBe(number);
  });
});

test.each<[CellValue]>([[null], [""], ["  "], ["-"], ["–"], ["—"], ["n/a"], ["N/A"], ["na"]])(
  "%j is blank, and no zero",
  (cell) => {
    expect(numberFromCell(cell)).toBeUndefined();
  },
);

describe("what cannot be read says why", () => {
  test.each<[cell: CellValue, id: string, values: object]>([
    ["about 6", "not-a-number", { value: "about 6" }],
    ["5.2.5", "not-a-number", { value: "5.2.5" }],
    ["5/0", "not-a-number", { value: "5/0" }],
    ["5 6", "not-a-number", { value: "5 6" }],
    ["0x10", "not-a-number", { value: "0x10" }],
    ["Infinity", "not-a-number", { value: "Infinity" }],
    [true, "not-a-number", { value: "true" }],
    [Number.NaN, "not-a-number", { value: "NaN" }],
    [Number.POSITIVE_INFINITY, "not-a-number", { value: "Infinity" }],
    ["5,25", "comma-is-unclear", { value: "5,25", read: "5.25" }],
    ["1,250", "comma-is-unclear", { value: "1,250", read: "1.250" }],
    [{ error: "#N/A" }, "cell-error", { value: "#N/A" }],
  ])("%j: %s", (cell, id, values) => {
    expect(() => numberFromCell(cell)).toThrow(expect.objectContaining({ id, values }));
  });
});

test("a number written as text is read as itself", () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (number) => {
      expect(numberFromCell(String(number))).toBe(number + 0);
    }),
  );
});

test("any text gives a finite number, a blank or a problem, never anything else", () => {
  fc.assert(
    fc.property(fc.string(), fc.constantFrom<DecimalMark>(".", ","), (text, decimal) => {
      try {
        const read = numberFromCell(text, decimal);
        expect(read === undefined || Number.isFinite(read)).toBe(true);
      } catch (problem) {
        expect(problem).toHaveProperty("name", "Problem");
      }
    }),
  );
});
