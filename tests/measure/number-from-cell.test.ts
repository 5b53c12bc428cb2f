import fc from "fast-check";
import type { CellValue } from "../../src/measure/cell-value";
import { isIssue } from "../../src/measure/issue";
import { numberFromCell, type DecimalMark } from "../../src/measure/number-from-cell";
import { slowEachTime } from "../slow-each-time";

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
    ["5,25", ".", 5.25],
    ["0,125", ".", 0.125],
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
    ["5,250", "comma-is-unclear", { value: "5,250", read: "5.250" }],
    ["1,250", "comma-is-unclear", { value: "1,250", read: "1.250" }],
    [{ error: "#N/A" }, "cell-error", { value: "#N/A" }],
  ])("%j: %s", (cell, id, values) => {
    expect(numberFromCell(cell)).toMatchObject({ id, values });
  });
});

test.each<[text: string, number: number]>([
  ["1.250,5", 1250.5],
  ["1.250.000", 1250000],
  ["5.25", 5.25],
  ["0.125", 0.125],
  ["1250.125", 1250.125],
])("with decimal commas %s is %d", (text, number) => {
  expect(numberFromCell(text, ",")).toBe(number);
});

test("with decimal commas a number that no cell holds is none", () => {
  expect(numberFromCell(`1${".000".repeat(200)}`, ",")).toMatchObject({ id: "not-a-number" });
});

test("with decimal commas thousands or decimals behind a point are asked about", () => {
  const values = { value: "1.250", whole: "1250", read: "1,250" };
  expect(numberFromCell("1.250", ",")).toMatchObject({ id: "point-is-unclear", values });
});

test("a number written as text is read as itself", () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, min: -9e307, max: 9e307 }), (number) => {
      // Below 2.2E-308 a cell holds 0 (Excel's limits of calculation, known widely).
      const held = Math.abs(number) < 2.2250738585072014e-308 ? 0 : number;
      expect(numberFromCell(String(number))).toBe(held);
    }),
  );
});

test("any text gives a finite number, a blank or an issue, never anything else", () => {
  fc.assert(
    fc.property(fc.string(), fc.constantFrom<DecimalMark>(".", ","), (text, decimal) => {
      const read = numberFromCell(text, decimal);
      if (typeof read === "number") expect(Number.isFinite(read)).toBe(true);
      else expect(read === undefined || isIssue(read)).toBe(true);
    }),
  );
});

test.each(["1e309", "-1e400", "9".repeat(400), "1/0", Number.MAX_VALUE, Infinity])(
  "%s is not a number that a cell can hold",
  (cell) => {
    expect(numberFromCell(cell)).toMatchObject({ id: "not-a-number" });
  },
);

test.each(["-0", -0, "-0.0", "-1e-320"])("%s is 0, without a sign", (cell) => {
  expect(Object.is(numberFromCell(cell), 0)).toBe(true);
});

test("a text as long as a cell can hold is refused within milliseconds, and quoted cut short", () => {
  const texts = ["1", " ", "1 ", "1,", ".", "-", "1/", "½", "%", "e"].flatMap((part) => [
    part.repeat(32_767 / part.length),
    `1${part.repeat(32_000 / part.length)}x`,
  ]);
  let read: ReturnType<typeof numberFromCell>[] = [];
  const readAll = () => void (read = texts.map((text) => numberFromCell(text)));
  // 20 texts; one that grew with the square of its length took seconds.
  expect(slowEachTime(readAll, 1000)).toBe(false);
  for (const issue of read.filter(isIssue))
    expect(String(issue.values.value).length).toBeLessThanOrEqual(60);
});
