import fc from "fast-check";
import { brokenRunRules, type RunRule } from "../../../src/acceptance/control-chart/run-rules";

/** Mean 0 and a deviation of 1, so that a value is its own distance from the mean. */
const UNIT = { lower: -3, mean: 0, upper: 3 };
const PRACTICE = "NIST/SEMATECH e-Handbook 6.3.2, common practice; worked by hand";

/** Values; for each rule that is broken, the positions from 1; why. */
const TABLES: readonly [string, number[], Partial<Record<RunRule, number[]>>][] = [
  ["a point on a limit is not beyond it", [0, 3, 0, -3], {}],
  ["a point beyond either limit", [0, 3.01, 0, -3.5], { "beyond-a-limit": [2, 4] }],
  ["two of three beyond two deviations", [2.1, 0, 2.1], { "two-of-three-near-a-limit": [3] }],
  [
    "the third in between may come last, then nothing new",
    [2.1, 2.1, 0, 0.1],
    {
      "two-of-three-near-a-limit": [2],
    },
  ],
  ["two of three on opposite sides do not count", [2.5, 0.1, -2.5], {}],
  ["two too far apart", [2.5, 0, 0, 2.5], {}],
  ["on the line of two deviations is not beyond it", [2, 0, 2], {}],
  [
    "four of five beyond one deviation",
    [1.1, 1.2, -0.2, 1.3, 1.1],
    {
      "four-of-five-off-the-mean": [5],
    },
  ],
  ["a fifth keeps it up", [1.1, 1.2, 1.3, 1.2, 1.1], { "four-of-five-off-the-mean": [4, 5] }],
  ["only three of five", [1.1, 1.2, 0.5, 0.4, 1.1], {}],
  ["below works as above", [-1.1, -1.2, -1.3, 0.1, -1.1], { "four-of-five-off-the-mean": [5] }],
  ["eight on one side", [0.1, 0.3, 0.2, 0.4, 0.1, 0.2, 0.1, 0.3], { "eight-on-one-side": [8] }],
  ["seven on one side are too few", [0.1, 0.3, 0.2, 0.4, 0.1, 0.2, 0.1], {}],
  ["a point on the mean ends the run", [0.1, 0.3, 0.2, 0, 0.1, 0.2, 0.1, 0.3, 0.2], {}],
  ["six rising", [-0.5, -0.3, -0.1, 0.1, 0.3, 0.5], { "six-rising": [6] }],
  ["five rising are too few", [-0.5, -0.3, -0.1, 0.1, 0.3, 0.3], {}],
  [
    "seven falling: the sixth and the seventh",
    [0.9, 0.6, 0.3, 0.1, -0.1, -0.3, -0.4],
    {
      "six-falling": [6, 7],
    },
  ],
  ["an equal neighbour ends a trend", [-0.5, -0.3, -0.1, -0.1, 0.3, 0.5], {}],
  [
    "fourteen up and down by turns",
    [0.1, -0.1, 0.2, -0.2, 0.1, -0.1, 0.2, -0.2, 0.1, -0.1, 0.2, -0.2, 0.1, -0.1],
    { "fourteen-up-and-down": [14] },
  ],
  [
    "thirteen by turns are too few",
    [0.1, -0.1, 0.2, -0.2, 0.1, -0.1, 0.2, -0.2, 0.1, -0.1, 0.2, -0.2, 0.1],
    {},
  ],
  [
    "one point breaks several",
    [2.5, 3.5],
    {
      "beyond-a-limit": [2],
      "two-of-three-near-a-limit": [2],
    },
  ],
];

test.each(TABLES)(`%s (${PRACTICE})`, (_why, values, broken) => {
  const found: Partial<Record<RunRule, number[]>> = {};
  brokenRunRules(values, UNIT).forEach((rules, i) => {
    for (const rule of rules) found[rule] = [...(found[rule] ?? []), i + 1];
  });
  expect(found).toEqual(broken);
});

test("zones follow each side of the chart by itself", () => {
  const skew = { lower: 5, mean: 6, upper: 9 };
  expect(brokenRunRules([4.9, 8.9], skew)).toEqual([["beyond-a-limit"], []]);
  expect(brokenRunRules([8.1, 8.1], skew)[1]).toEqual(["two-of-three-near-a-limit"]);
});

test("equal values break nothing, also when their mean is no short number", () => {
  const mean = (5.1 + 5.1 + 5.1) / 3;
  expect(brokenRunRules([5.1, 5.1, 5.1], { lower: mean, mean, upper: mean })).toEqual([[], [], []]);
});

test("what comes later never changes what was said before", () => {
  const values = fc.array(
    fc.integer({ min: -40, max: 40 }).map((n) => n / 10),
    { maxLength: 40 },
  );
  fc.assert(
    fc.property(values, fc.nat(40), (all, cut) => {
      const part = all.slice(0, cut);
      expect(brokenRunRules(part, UNIT)).toEqual(brokenRunRules(all, UNIT).slice(0, part.length));
    }),
  );
});

test("a chart turned upside down breaks the same rules, rising for falling", () => {
  const values = fc.array(
    fc.integer({ min: -40, max: 40 }).map((n) => n / 10),
    { maxLength: 40 },
  );
  const turned = (rule: RunRule) =>
    rule === "six-rising" ? "six-falling" : rule === "six-falling" ? "six-rising" : rule;
  fc.assert(
    fc.property(values, (all) => {
      const down = brokenRunRules(
        all.map((value) => -value),
        UNIT,
      );
      expect(down.map((rules) => rules.map(turned))).toEqual(
        brokenRunRules(all, UNIT).map((rules) => [...rules]),
      );
    }),
  );
});
