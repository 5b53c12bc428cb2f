import { shown } from "./custom-functions-runtime";
import { roundStep } from "../../src/functions/rounding";

test.each([
  [5.125, 0.25, 5, "derived from ASTM E29"],
  [45.45, 0.1, 45.4, "an Arkansas sampling manual"],
  [6075, 50, 6100, "from memory, ASTM E29"],
])("FRESH.ROUND.STEP(%s, %s) is %s (%s)", (value, step, rounded) => {
  expect(shown(() => roundStep([[value]], [[step]]))).toBe(rounded);
});

test("one step serves a whole column, and blanks stay blank", () => {
  expect(shown(() => roundStep([[5.125], [null], [5.375]], [[0.25]]))).toEqual([[5], [""], [5.5]]);
});

test("a step is needed", () => {
  expect(shown(() => roundStep([[5.125]], [[null]]))).toMatch(/^#VALUE! Step: nothing is given/);
});

test("a step below zero is refused by name", () => {
  expect(shown(() => roundStep([[5.125]], [[-0.25]]))).toMatch(
    /^#VALUE! Step: -0.25 is not a step/,
  );
});
