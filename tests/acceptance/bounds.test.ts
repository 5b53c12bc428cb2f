import { alcoholStepsAway, measuredAmounts } from "../../src/acceptance/alcohol-steps";
import { compareRounded } from "../../src/acceptance/compare-rounded";
import { disposition } from "../../src/acceptance/disposition/disposition";
import { singleResultLimits } from "../../src/acceptance/en-206/single-result";
import { guardedLimits } from "../../src/acceptance/guarded-limits";
import { compareWithLimits, verdictOn } from "../../src/acceptance/limits";
import { registerState } from "../../src/acceptance/register";
import { trends, type TrendTest } from "../../src/acceptance/trend";
import { issue } from "../../src/measure/issue";

/* What holds at the very bounds, by the definition of each. */

test.each([
  [5, { low: 4.5, high: 7.5 }, "within"],
  [4.5, { low: 4.5, high: 7.5 }, "within"],
  [7.5, { low: 4.5, high: 7.5 }, "within"],
  [4.25, { low: 4.5 }, "below"],
  [7.75, { high: 7.5 }, "above"],
  [100, { low: 4.5 }, "within"],
  [0, { high: 7.5 }, "within"],
  [5, {}, undefined],
  // One that cannot be read might be the one that decides.
  [5, { low: 4.5, unread: true }, undefined],
  [4, { low: 4.5, unread: true }, "below"],
  [5, { unread: true }, undefined],
] as const)("%d against %j: %s", (value, limits, verdict) => {
  expect(verdictOn(value, limits)).toBe(verdict);
});

test("without limits everything is within them", () => {
  expect(compareWithLimits(5)).toBe("within");
});

test.each([
  [9, "within"],
  [-9, "within"],
  [10, "places-not-whole"],
  [1.5, "places-not-whole"],
])("rounded to %d places before it is compared: %s", (places, expected) => {
  const compared = compareRounded(5, { low: 0, high: 1e10 }, places);
  expect(typeof compared === "string" ? compared : compared.id).toBe(expected);
});

// Pints are measured in quarters, ounces in fours, litres in tenths; the table ends at 5 pt, 80 oz, 2.4 L (C173).
test.each([
  ["pt", 21, 0.25, 5],
  ["oz", 21, 4, 80],
  ["L", 25, 0.1, 2.4],
] as const)("%s has %d amounts, in steps of %d to %d", (unit, count, step, end) => {
  const amounts = measuredAmounts(unit);
  expect(amounts).toHaveLength(count);
  expect([amounts[0], amounts[1], amounts.at(-1)]).toEqual([0, step, end]);
});

test("a step leads to nothing and to the end of the table, and not beyond", () => {
  const first = alcoholStepsAway({ amount: 80, unit: "oz" }, 1);
  expect(first).toBeUndefined();
  expect(alcoholStepsAway({ amount: 0, unit: "oz" }, -1)).toBeUndefined();
  const step = 80 - alcoholStepsAway({ amount: 80, unit: "oz" }, -1)!.amount;
  expect(step).toBeGreaterThan(0);
  expect(alcoholStepsAway({ amount: step, unit: "oz" }, -1)).toEqual({ amount: 0, unit: "oz" });
  expect(alcoholStepsAway({ amount: 80 - step, unit: "oz" }, 1)).toEqual({
    amount: 80,
    unit: "oz",
  });
});

// 2026-01-01 is day 46023; a year later is 46388.
test.each([
  ["M-1", 46023, { state: "current", days: 365 }],
  ["M-1", 46357, { state: "current", days: 31 }],
  ["M-1", 46358, { state: "due", days: 30 }],
  ["M-1", 46388, { state: "due", days: 0 }],
  ["M-1", 46389, { state: "overdue", days: 1 }],
  ["M-1", 46022, { state: "unknown" }],
  [" m-1 ", 46023, { state: "current", days: 365 }],
  ["cup  A", 46023, { state: "current", days: 365 }],
  ["CupA", 46023, { state: "unknown" }],
])("%s on day %d: %j", (id, day, state) => {
  const register = [
    { id: "M-1", checked: 46023 },
    { id: "Cup A", checked: 46023 },
  ];
  expect(registerState(id, day, register)).toEqual(state);
});

test("of several checks of one thing the last before the day counts, in any order", () => {
  const register = [
    { id: "M-1", checked: 46000 },
    { id: "M-1", checked: 46100 },
    { id: "M-1", checked: 45900 },
    { id: "M-1", checked: 46300 },
  ];
  // A month from 2026-03-19 (46100) is 46131.
  expect(registerState("M-1", 46110, register, 1)).toEqual({ state: "due", days: 21 });
  expect(registerState("M-1", 46110, [{ id: "M-1", checked: 46100 }], 0)).toMatchObject({
    id: "interval-not-whole",
    values: { value: 0 },
  });
});

const wrong = issue("deviation-not-above-zero", { value: 0 });
test.each([
  [{ low: 4.5, high: 7.5 }, (at: number) => (at === 4.5 ? wrong : 0.28), "low"],
  [{ low: 4.5, high: 7.5 }, (at: number) => (at === 7.5 ? wrong : 0.28), "high"],
  [{ low: 4.5 }, () => wrong, "low"],
  [{ high: 7.5 }, () => wrong, "high"],
])("a deviation that is refused is told at its limit: %j", (limits, deviationOf, place) => {
  expect(guardedLimits(limits, 0.05, deviationOf)).toMatchObject({ id: wrong.id, place });
});

test("guarded limits that meet leave one value, and a single one leaves no other", () => {
  expect(guardedLimits({ low: 5, high: 5 }, 0.5, () => 1)).toMatchObject({ low: 5, high: 5 });
  expect(guardedLimits({ high: 7.5 }, 0.5, () => 1)).toEqual({ low: undefined, high: 7.5 });
});

// EN 206-1 Table 17 (0.5 below, 1.0 above for air; 0.02 above for w/c) and DIN 1045-2 (4 above a least value).
test.each([
  ["air", { low: 4 }, undefined, { low: 3.5, high: undefined }],
  ["air", { low: 4 }, true, { low: 3.5, high: 9 }],
  ["air", { low: 4, high: 8 }, true, { low: 3.5, high: 9 }],
  ["air", { high: 8 }, true, { low: undefined, high: 9 }],
  ["lightweight density", { low: 1600 }, true, { low: 1570, high: undefined }],
  ["w/c", { low: 0.3, high: 0.45 }, undefined, { low: undefined, high: 0.47 }],
] as const)("a single result of %s, %j, German: %s: %j", (quantity, limits, german, expected) => {
  expect(singleResultLimits(quantity, limits, german)).toEqual(expected);
});

test("crossed limits of EN 206 are refused", () => {
  expect(singleResultLimits("air", { low: 8, high: 4 })).toMatchObject({
    id: "limits-the-wrong-way-round",
  });
});

// By UFGS 03300A a result that reaches a limit is tested again, and the mean counts.
test.each([
  [{ first: 4.5 }, { low: 4.5, high: 7.5 }, "check test"],
  [{ first: 7.5 }, { low: 4.5, high: 7.5 }, "check test"],
  [{ first: 6 }, { low: 4.5, high: 7.5 }, "accept"],
  [{ first: 6 }, { low: 4.5 }, "accept"],
  [{ first: 6 }, { high: 7.5 }, "accept"],
])("averaged: %j against %j: %s", (load, limits, decision) => {
  const decided = disposition(load, limits, "averaged");
  expect(decided === "accept" ? "accept" : "check test").toBe(decision);
});

const point = (change: Partial<TrendTest>): TrendTest =>
  ({
    ...{ test: "valid", value: 6, limits: {}, row: 1 },
    ...change,
  }) as TrendTest;

test("a trend's tests are grouped by names as they were first written, whatever their blanks and capitals", () => {
  const tests = ["LW  40", "lw 40 ", "LW 40", "LW40"].map((mix) => point({ mix }));
  expect(trends(tests, "mix").map(({ mix, points }) => [mix, points.length])).toEqual([
    ["LW 40", 3],
    ["LW40", 1],
  ]);
});

test("what is left out of a trend is counted by its kind", () => {
  const tests = [
    point({}),
    point({ test: "void" }),
    point({ test: "incomplete", value: undefined }),
    point({ value: undefined }),
    point({ test: "void", value: undefined }),
  ];
  const [trend] = trends(tests);
  expect(trend!.points).toHaveLength(1);
  expect(trend!.leftOut).toEqual({ void: 2, incomplete: 1, blank: 1 });
});

test.each([
  [
    [
      { low: 4.5, high: 7.5 },
      { low: 4.5, high: 7.5 },
    ],
    { low: 4.5, high: 7.5 },
  ],
  [
    [
      { low: 4.5, high: 7.5 },
      { low: 4.5, high: 8 },
    ],
    undefined,
  ],
  [
    [
      { low: 4.5, high: 7.5 },
      { low: 5, high: 7.5 },
    ],
    undefined,
  ],
  [[{ low: 4.5 }, { low: 4.5 }], { low: 4.5, high: undefined }],
  [[{ high: 7.5 }, { high: 7.5 }], { low: undefined, high: 7.5 }],
  [[{}, {}], undefined],
])("the specification that tests with %j have in common: %j", (limits, common) => {
  const [trend] = trends(limits.map((each) => point({ limits: each })));
  expect(trend!.specification).toEqual(common);
});
