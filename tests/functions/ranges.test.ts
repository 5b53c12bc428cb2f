import { shown } from "./custom-functions-runtime";
import { check, findings } from "../../src/functions/field-sheet";
import { air } from "../../src/functions/volumetric-air";

/** A column as Excel hands it over when it is chosen whole, below its header. */
const wholeColumn: unknown[][] = Array.from({ length: 1_048_575 }, () => [null]);
const SAYS = /^#VALUE! \w+: a whole column is given\. Give only the rows that hold data/;

describe("a whole column is refused, and named", () => {
  test("FRESH.AIR", () => {
    expect(shown(() => air(wholeColumn as any[][], [[0]]))).toMatch(SAYS);
  });

  test.each([
    ["FRESH.CHECK", check],
    ["FRESH.FINDINGS", findings],
  ])("%s", (_, checks) => {
    expect(shown(() => checks([["First reading"]], wholeColumn as any[][]))).toMatch(SAYS);
  });
});

test("ranges of unequal size are refused, with both sizes", () => {
  const sentence = shown(() => air([[6], [6], [6]], [[0], [1]]));
  expect(sentence).toBe(
    "#VALUE! Cups: the range is 2 × 1 cells (rows × columns), the others 3 × 1. Give ranges of one size, or single values.",
  );
});
