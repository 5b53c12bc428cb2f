import fc from "fast-check";
import { cusum } from "../../../src/acceptance/control-chart/cusum";
import { ewmaChart } from "../../../src/acceptance/control-chart/ewma";
import {
  individualsLimits,
  seriesSpread,
} from "../../../src/acceptance/control-chart/individuals-limits";
import { CUSUM, EWMA, INDIVIDUALS } from "../../check-values/statistics";
import { expectAsPrinted } from "../../check-values/worked";
import { resultOf } from "../../check-values/result-of";

test(`individuals chart (${INDIVIDUALS.source})`, () => {
  const { lower, mean, upper } = resultOf(individualsLimits(INDIVIDUALS.values));
  expectAsPrinted(mean, INDIVIDUALS.mean);
  expectAsPrinted(
    resultOf(seriesSpread(INDIVIDUALS.values)).deviation * 1.128,
    INDIVIDUALS.meanMovingRange,
  );
  expectAsPrinted(lower, INDIVIDUALS.lower);
  expectAsPrinted(upper, INDIVIDUALS.upper);
});

test(`EWMA chart (${EWMA.source})`, () => {
  const { smoothed, lower, upper } = resultOf(ewmaChart(EWMA.values, EWMA));
  smoothed.forEach((value, i) => expectAsPrinted(value, EWMA.smoothed[i]!));
  // The handbook takes 0.4201 for the root of 0.3 / 1.7, which is 0.42008.
  expect(Math.abs(lower - Number(EWMA.lower))).toBeLessThan(0.0002);
  expect(Math.abs(upper - Number(EWMA.upper))).toBeLessThan(0.0002);
});

test(`cumulative sums (${CUSUM.source})`, () => {
  const points = resultOf(cusum(CUSUM.values, CUSUM.target, CUSUM.k, CUSUM.h));
  points.forEach(({ high, low }, i) => {
    expectAsPrinted(high, CUSUM.high[i]!);
    expectAsPrinted(low, CUSUM.low[i]!);
  });
  // 4.94 in group 14 is the first sum over 4.1959.
  expect(points.map(({ signal }) => signal)).toEqual([
    ...Array(13).fill(undefined),
    ...Array(7).fill("high"),
  ]);
});

test.each([
  [[6, 7, 7, 7, 6], [0, 0.5, 1, 1.5, 1], [0, 0, 0, 0, 0], "derived: each 7 adds 7 − 6 − 0.5"],
  [[6, 5, 5, 6, 6], [0, 0, 0, 0, 0], [0, 0.5, 1, 0.5, 0], "derived: each 5 adds 6 − 0.5 − 5"],
  [[6.1, 6.6, 6.6], [0, 0.1, 0.2], [0, 0, 0], "derived: no noise of binary fractions"],
])("sums of %j about 6 with allowance 0.5 (%4$s)", (values, high, low) => {
  const points = resultOf(cusum(values, 6, 0.5, 1.5));
  expect(points.map((point) => point.high)).toEqual(high);
  expect(points.map((point) => point.low)).toEqual(low);
  expect(points.every(({ signal }) => signal === undefined)).toBe(true);
});

test("a sum on the decision value is no signal, one beyond it is, on either side", () => {
  expect(resultOf(cusum([7.5, 6.6], 6, 0.5, 1)).map(({ signal }) => signal)).toEqual([
    undefined,
    "high",
  ]);
  expect(resultOf(cusum([4.5, 5.4], 6, 0.5, 1)).map(({ signal }) => signal)).toEqual([
    undefined,
    "low",
  ]);
});

test("a weight of 1 smooths nothing, and limits are those of single results", () => {
  const { smoothed, lower, upper } = resultOf(ewmaChart(INDIVIDUALS.values, { lambda: 1 }));
  const limits = resultOf(individualsLimits(INDIVIDUALS.values));
  smoothed.forEach((value, i) => expect(value).toBeCloseTo(INDIVIDUALS.values[i]!, 12));
  expect(lower).toBeCloseTo(limits.lower, 12);
  expect(upper).toBeCloseTo(limits.upper, 12);
});

test.each([
  [individualsLimits([6]), "chart-needs-two-values"],
  [individualsLimits([]), "chart-needs-two-values"],
  [ewmaChart([6]), "chart-needs-two-values"],
  [ewmaChart([6, 7], { lambda: 0 }), "lambda-out-of-range"],
  [ewmaChart([6, 7], { lambda: 1.1 }), "lambda-out-of-range"],
  [ewmaChart([6, 7], { lambda: NaN }), "lambda-out-of-range"],
  [ewmaChart([6, 7], { deviation: 0 }), "deviation-not-above-zero"],
  [cusum([6], 6, -0.1, 1), "allowance-negative"],
  [cusum([6], 6, 0.1, 0), "decision-not-above-zero"],
])("%j is refused with %s", (refused, id) => {
  expect(refused).toMatchObject({ id });
});

test("one result is enough where target and deviation are given", () => {
  expect(resultOf(ewmaChart([7], { lambda: 0.5, target: 6, deviation: 1 })).smoothed).toEqual([
    6.5,
  ]);
});

test("a shift of all values shifts the chart and nothing else; inputs stay as they are", () => {
  const series = fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 2, maxLength: 40 });
  fc.assert(
    fc.property(series, fc.integer({ min: -500, max: 500 }), (values, shift) => {
      const frozen = Object.freeze([...values]);
      const before = resultOf(individualsLimits(frozen));
      const after = resultOf(individualsLimits(values.map((value) => value + shift)));
      expect(after.mean - before.mean).toBeCloseTo(shift, 6);
      expect(after.upper - before.upper).toBeCloseTo(shift, 6);
      expect(before.upper - before.mean).toBeCloseTo(before.mean - before.lower, 6);
      const { smoothed } = resultOf(ewmaChart(frozen, {}));
      expect(Math.max(...smoothed)).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
      expect(Math.min(...smoothed)).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
    }),
  );
});
