import { inOneCell, checkRefused } from "./one-cell";
import { shown } from "./custom-functions-runtime";
import {
  acceptByCheckTest,
  chanceWithinSpecification,
  compareWithSpecification,
  guardedSpecification,
  limitsFromTarget,
  marginToSpecification,
} from "../../src/functions/specification";
import { CHANCES } from "../check-values/statistics";
import { expectAsPrinted } from "../check-values/worked";

const column = (...values: unknown[]) => values.map((value) => [value]);
const one = (value: unknown) => [[value]];

test.each<[unknown[], unknown[][], string]>([
  [[6], [[4.5, 7.5]], "from memory, ACI 318-19: ± 1.5 unless given"],
  [[6, 1], [[5, 7]], "UFC 3-250-04FA: 6 ± 1"],
  [[6, 1, 2], [[5, 8]], "derived: 6 − 1 and 6 + 2"],
  [["6.0 %", "1 1/2"], [[4.5, 7.5]], "numbers are read as people write them"],
  [[null, 1.5], [["", ""]], "a blank target gives blanks"],
])("FRESH.SPEC.LIMITS of %j is %j (%s)", (given, cells) => {
  expect(inOneCell(limitsFromTarget, given)).toEqual(cells);
});

test("FRESH.SPEC.LIMITS spills down, and one bad row never hides the others", () => {
  expect(shown(() => limitsFromTarget(column(6, "x", null, 5), one(1)))).toEqual([
    [5, 7],
    ["#VALUE!", "#VALUE!"],
    ["", ""],
    [4, 6],
  ]);
});

checkRefused("SPEC.LIMITS", limitsFromTarget, [
  [["six"], /^#VALUE! Target: “six” is not a number/],
  [[6, -1.5], /^#VALUE! Tolerance: a tolerance of -1.5 cannot be/],
  [[6, 1.5, -1], /^#VALUE! Tolerance above: a tolerance of -1 cannot be/],
  [[6, "x"], /^#VALUE! Tolerance: “x”/],
]);

test("targets in several columns are refused, since each limit needs its own cell", () => {
  expect(shown(() => limitsFromTarget([[6, 5]]))).toMatch(
    /^#VALUE! Target: the range has 2 columns\. Give one column/,
  );
});

test.each([
  [[7.5, 4.5, 7.5], "within", "on a limit is within (common practice)"],
  [[7.75, 4.5, 7.5], "above", "derived"],
  [[4.49, 4.5, 7.5], "below", "derived: the number as it is"],
  [[4.49, 4.5, 7.5, 1], "within", "derived: rounded to tenths it is 4.5"],
  [[7.55, 4.5, 7.5, 1], "above", "derived: half goes to the even tenth, 7.6"],
  [[7.45, null, 7.4, 1], "within", "derived: half goes to the even tenth, 7.4"],
  [[0, 4, null], "below", "a zero is not a blank"],
  [[9, 4, null], "within", "only a low limit"],
  [[null, 4.5, 7.5], "", "a blank result is not compared"],
])("FRESH.SPEC.COMPARE of %j is %s (%s)", (given, verdict) => {
  expect(inOneCell(compareWithSpecification, given)).toBe(verdict);
});

checkRefused("SPEC.COMPARE", compareWithSpecification, [
  [["wet", 4.5, 7.5], /^#VALUE! Value: “wet”/],
  [[6, null, null], /^#VALUE! No limit is given/],
  [[6, 7.5, 4.5], /^#VALUE! The low limit, 7.5, lies above the high limit, 4.5/],
  [[6, "low", 7.5], /^#VALUE! Low: “low” is not a number/],
  [[6, 4.5, 7.5, 0.5], /^#VALUE! Places: 0.5 is not a number of decimal places/],
]);

test.each([
  [[7.25, 4.5, 7.5], 0.25, "derived"],
  [[7.75, 4.5, 7.5], -0.25, "derived"],
  [[4.5, 4.5, 7.5], 0, "derived"],
  [[3.7, 4, null], -0.3, "derived, without the noise of binary fractions"],
])("FRESH.SPEC.MARGIN of %j is %s (%s)", (given, margin) => {
  expect(inOneCell(marginToSpecification, given)).toBe(margin);
});

checkRefused("SPEC.MARGIN", marginToSpecification, [
  [["?", 4.5, 7.5], /^#VALUE! Value: “\?”/],
  [[6, null, ""], /^#VALUE! No limit is given/],
  [[6, 8, 7], /^#VALUE! The low limit, 8, lies above/],
]);

test.each(CHANCES)(
  "FRESH.SPEC.CHANCE of %s in %s to %s with deviation %s is %s (%s)",
  (value, low, high, deviation, printed) => {
    expectAsPrinted(inOneCell(chanceWithinSpecification, [value, low, high, deviation]), printed);
  },
);

test.each([
  [[7.25, 4.5, 7.5, null, "C231"], "0.814", "derived: (7.5 − 7.25) / 0.28 = 0.893"],
  [[7.25, 4.5, 7.5, 0.28, "C173"], "0.814", "the user's own deviation goes before"],
  [[7.5, null, 8.325, null, "C173"], "0.841", "derived: one deviation, 11 % of 7.5 = 0.825"],
  [[7.5, null, 8.325], "0.841", "C173 where nothing is said"],
  [[144.82, null, 144, null, "C138"], "0.159", "derived: 0.82 lb/ft³ is one deviation"],
])("FRESH.SPEC.CHANCE of %j is %s (%s)", (given, printed) => {
  expectAsPrinted(inOneCell(chanceWithinSpecification, given), printed);
});

checkRefused("SPEC.CHANCE", chanceWithinSpecification, [
  [["x", 4.5, 7.5], /^#VALUE! Value: “x”/],
  [[6, null, null], /^#VALUE! No limit is given/],
  [[6, 7.5, 4.5], /^#VALUE! The low limit/],
  [[6, 4.5, 7.5, 0], /^#VALUE! Deviation: 0 is not a standard deviation/],
  [[6, 4.5, 7.5, -0.3], /^#VALUE! Deviation: -0.3 is not a standard deviation/],
  [
    [6, 4.5, 7.5, null, "C39"],
    /^#VALUE! Method: no precision is on file for “C39”.*C173, C231, C138/,
  ],
  [[-1, 4.5, 7.5], /^#VALUE! Value: -1 % cannot be a result by C173/],
  [
    [2300, 2200, 2400, null, "C138"],
    /^#VALUE! Value: 2300 lb\/ft³ cannot be a result by C138.*C138M/,
  ],
]);

test.each([
  [[4.5, 7.5, 0.05, null, "C231"], ["4.9606", "7.0394"], "derived: 1.64485 × 0.28 = 0.46056"],
  [[4.5, 7.5, 0.05], ["5.3142", "6.1430"], "derived: 1.64485 × 11 % of 4.5 and of 7.5"],
  [[4.5, 7.5, "0.05", 0.28, "C173"], ["4.9606", "7.0394"], "the user's own deviation goes before"],
])("FRESH.SPEC.GUARD of %j is %j (%s)", (given, printed) => {
  const [cells] = inOneCell(guardedSpecification, given) as [unknown[]];
  cells.forEach((cell, i) => expectAsPrinted(cell, printed[i]!));
});

test("FRESH.SPEC.GUARD leaves the side without a limit blank", () => {
  const [cells] = inOneCell(guardedSpecification, [4.5, null, 0.5, 0.28]) as [unknown[]];
  expect(cells[0]).toBeCloseTo(4.5, 12);
  expect(cells[1]).toBe("");
  expect(inOneCell(guardedSpecification, [null, null, 0.05])).toEqual([["", ""]]);
});

checkRefused("SPEC.GUARD", guardedSpecification, [
  [["x", 7.5, 0.05], /^#VALUE! Low: “x”/],
  [[4.5, 7.5, null], /^#VALUE! Risk: nothing is given/],
  [[4.5, 7.5, 5], /^#VALUE! Risk: a risk of 5 cannot be held/],
  [[4.5, 7.5, "5 %"], /^#VALUE! Risk: a risk of 5 cannot be held.*0.05/],
  [[4.5, 7.5, 0], /^#VALUE! Risk: a risk of 0 cannot be held/],
  [[7.5, 4.5, 0.05], /^#VALUE! The low limit/],
  // 4.5 + 2.326 × 0.495 = 5.65 lies above 7.5 − 2.326 × 0.825 = 5.58.
  [[4.5, 7.5, 0.01], /^#N\/A No result can hold a risk of 0.01/],
  [[4.5, 7.5, 0.05, 0.28, "C999"], /^#VALUE! Method: no precision is on file for “C999”/],
]);

test.each([
  [[7.5, 4.5, 7.5], "accept"],
  [[7.75, 4.5, 7.5], "check test"],
  [[7.75, 4.5, 7.5, 7.25], "accept"],
  // Averaged they would lie within; each by itself fails.
  [[7.75, 4.5, 7.5, 4.25], "reject"],
  [[3.5, 4, null, null], "check test"],
  [[null, 4.5, 7.5], ""],
])("FRESH.SPEC.ACCEPT of %j is %s (trade article quoting ASTM C94)", (given, decision) => {
  expect(inOneCell(acceptByCheckTest, given)).toBe(decision);
});

checkRefused("SPEC.ACCEPT", acceptByCheckTest, [
  [["x", 4.5, 7.5], /^#VALUE! First: “x”/],
  [[6, null, null], /^#VALUE! No limit is given/],
  [[8, 4.5, 7.5, "later"], /^#VALUE! Check: “later”/],
  [[null, 4.5, 7.5, 6], /^#VALUE! First: nothing is given/],
]);

test("a column with limits of its own, and single limits for a column", () => {
  const results = column(7.5, 7.75, null, "x");
  const verdicts = column("within", "above", "", "#VALUE!");
  expect(shown(() => compareWithSpecification(results, one(4.5), one(7.5)))).toEqual(verdicts);
  const [lows, highs] = [column(4.5, 4.5, null, 4.5), column(7.5, 7.5, null, 7.5)];
  expect(shown(() => compareWithSpecification(results, lows, highs))).toEqual(verdicts);
  expect(shown(() => marginToSpecification(results, lows, column(7.5, 7.5)))).toMatch(
    /^#VALUE! High: the range is 2 × 1 cells/,
  );
});
