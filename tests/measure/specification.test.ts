import type { CellValue } from "../../src/measure/cell-value";
import { specificationFromCell, toleranceFromCell } from "../../src/measure/specification";

// How specifications are written is common practice; the sums are done by hand.
test.each<[CellValue, object]>([
  ["6 ± 1.5", { aim: 6, low: 4.5, high: 7.5 }],
  ["6±1.5%", { aim: 6, low: 4.5, high: 7.5 }],
  ["6 +/- 1.5", { aim: 6, low: 4.5, high: 7.5 }],
  ["6 1/2 ± 1 1/2", { aim: 6.5, low: 5, high: 8 }],
  ["6½ ± 1½ %", { aim: 6.5, low: 5, high: 8 }],
  ["6,5 ± 1,5", { aim: 6.5, low: 5, high: 8 }],
  ["6.0 +2/-1", { aim: 6, low: 5, high: 8 }],
  ["6 (+2, -1)", { aim: 6, low: 5, high: 8 }],
  ["4.5-7.5", { low: 4.5, high: 7.5 }],
  ["4.5 – 7.5 %", { low: 4.5, high: 7.5 }],
  ["4.5 to 7.5", { low: 4.5, high: 7.5 }],
  ["min 4", { low: 4 }],
  ["4 min.", { low: 4 }],
  ["≥ 4", { low: 4 }],
  ["not less than 4 %", { low: 4 }],
  ["max 7.5", { high: 7.5 }],
  ["7.5 max", { high: 7.5 }],
  ["<= 7.5", { high: 7.5 }],
  ["min 4, max 7.5", { low: 4, high: 7.5 }],
  ["at least 4 and at most 7.5", { low: 4, high: 7.5 }],
])("%j specifies %j", (written, specified) => {
  expect(specificationFromCell(written)).toEqual(specified);
});

const FROM_TO = { say: "from-to", values: { from: "4.5", to: "7.5" } };
const twoWays = (one: unknown, other: unknown) => ({ id: "two-ways", values: { one, other } });

test.each<[CellValue, object]>([
  ["7.5, 4.5", { id: "two-ways", values: { one: FROM_TO } }],
  ["7.5-4.5", twoWays("7.5 ± 4.5", { say: "from-to", values: { from: 4.5, to: 7.5 } })],
  ["4.5 7.5", twoWays("4.5 ± 7.5", FROM_TO)],
  ["min 4, min 5", { id: "not-a-specification" }],
  ["6 ± 1, max 8", { id: "not-a-specification" }],
  ["as ordered", { id: "not-a-specification" }],
  ["max 7.5 and fine", { id: "not-a-specification" }],
  [{ error: "#N/A" }, { id: "cell-error" }],
])("%j is not read, and the sentence says why: %j", (written, issue) => {
  expect(specificationFromCell(written)).toMatchObject(issue);
});

test.each<[CellValue, object | undefined]>([
  [1.5, { below: 1.5, above: 1.5 }],
  ["1.5", { below: 1.5, above: 1.5 }],
  ["±1.5", { below: 1.5, above: 1.5 }],
  ["+/- 1.5 %", { below: 1.5, above: 1.5 }],
  ["+2/-1", { below: 1, above: 2 }],
  ["(+2, -1)", { below: 1, above: 2 }],
  [null, undefined],
  ["n/a", undefined],
])("a tolerance of %j is %j", (written, tolerance) => {
  expect(toleranceFromCell(written)).toEqual(tolerance);
});

test("a tolerance in words is refused", () => {
  expect(toleranceFromCell("usual")).toMatchObject({ id: "not-a-number" });
});
