import { aggregateSizeFromCell } from "../../src/measure/aggregate-size";

const PRACTICE = "common practice";

test.each([
  [0.75, "us", 0.75, "in"],
  ["3/4", "us", 0.75, "in"],
  ["3/4 in", "si", 0.75, "in"],
  ['3/8"', "us", 0.375, "in"],
  ["⅜ in", "us", 0.375, "in"],
  ["1 1/2", "us", 1.5, "in"],
  ["1-1/2 in.", "us", 1.5, "in"],
  ["1½ inch", "us", 1.5, "in"],
  ["19 mm", "us", 19, "mm"],
  ["37.5mm", "us", 37.5, "mm"],
  [20, "si", 20, "mm"],
  ["20", "si", 20, "mm"],
  ["25 millimetres", "si", 25, "mm"],
] as const)(`%j in %s is %s %s (${PRACTICE})`, (written, system, size, unit) => {
  expect(aggregateSizeFromCell(written, system)).toEqual({ size, unit });
});

test.each([null, "", "n/a"])("%j is blank", (written) => {
  expect(aggregateSizeFromCell(written, "us")).toBeUndefined();
});

test.each([
  [19, "us", "value-in-other-system"],
  [0.75, "si", "value-in-other-system"],
  [0, "us", "value-cannot-be"],
  [46085, "us", "size-looks-like-date"],
  ["coarse", "us", "aggregate-size-cannot-be"],
  ["No. 67", "us", "aggregate-size-cannot-be"],
  ["3/4 in to No. 4", "us", "aggregate-size-cannot-be"],
  [{ error: "#N/A" }, "us", "cell-error"],
] as const)("%j in %s is refused: %s", (written, system, id) => {
  expect(aggregateSizeFromCell(written, system)).toMatchObject({ id });
});

test("a decimal comma is read where the workbook writes one", () => {
  expect(aggregateSizeFromCell("37,5 mm", "si", ",")).toEqual({ size: 37.5, unit: "mm" });
});
