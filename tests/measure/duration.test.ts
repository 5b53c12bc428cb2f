import type { CellValue } from "../../src/measure/cell-value";
import { durationFromCell, type DurationUnit } from "../../src/measure/duration";

test.each<[cell: CellValue, into: DurationUnit, header: string | undefined, duration: number]>([
  [45, "s", undefined, 45],
  [45, "s", "s", 45],
  [1, "s", "min", 60],
  [1.5, "s", "minutes", 90],
  [3, "min", undefined, 3],
  [90, "min", "sec.", 1.5],
  ["45 s", "s", undefined, 45],
  ["45 sec", "min", "min", 0.75],
  ["1 min", "s", "s", 60],
  ["1 1/2 minutes", "s", undefined, 90],
  ["1:30", "s", undefined, 90],
  ["0:01:30", "s", undefined, 90],
  ["00:07:30", "min", undefined, 7.5],
  ["0:30", "s", undefined, 30],
  ["1:30", "min", "s", 1.5],
  [20, "min", "s", 20 / 60],
  [3, "min", "%", 3],
])("%j into %s under a header with %j: %d", (cell, into, header, duration) => {
  expect(durationFromCell(cell, into, header)).toBeCloseTo(duration, 9);
});

test("a blank is not a zero", () => {
  expect(durationFromCell("n/a", "s")).toBeUndefined();
});

test.each<[CellValue, string]>([
  ["long", "not-a-number"],
  ["3 h", "not-a-number"],
  ["1:75", "not-a-number"],
  ["1,500 min", "comma-is-unclear"],
  [{ error: "#N/A" }, "cell-error"],
])("%j is refused: %s", (cell, id) => {
  expect(durationFromCell(cell, "s")).toMatchObject({ id });
});
