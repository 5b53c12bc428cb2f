import cdf from "@stdlib/stats-base-dists-normal-cdf";
import quantile from "@stdlib/stats-base-dists-normal-quantile";
import {
  normalPointAt,
  normalShareBelow,
  normalShareBetween,
} from "../../src/acceptance/normal-distribution";

const points = Array.from({ length: 3201 }, (_, i) => (i - 1600) / 200);
const shares = Array.from({ length: 1999 }, (_, i) => (i + 1) / 2000);
const smallShares = Array.from({ length: 40 }, (_, i) => 10 ** (-3 - i / 20));
const tinyShares = Array.from({ length: 280 }, (_, i) => 10 ** (-5 - i / 20));

function worst(differences: readonly number[]): number {
  return Math.max(...differences.map(Math.abs));
}

test("shares are those of a reference library to 1e-12, from -8 to 8 deviations", () => {
  expect(worst(points.map((z) => normalShareBelow(z) - cdf(z, 0, 1)))).toBeLessThan(1e-12);
});

test("far out in the lower tail the share is right to 1e-11 of itself", () => {
  const tail = Array.from({ length: 340 }, (_, i) => -3 - i / 10);
  expect(worst(tail.map((z) => normalShareBelow(z) / cdf(z, 0, 1) - 1))).toBeLessThan(1e-11);
});

test("points are those of a reference library to 1e-12 of themselves", () => {
  const all = [...shares, ...smallShares].filter((share) => share !== 0.5);
  expect(worst(all.map((p) => normalPointAt(p) / quantile(p, 0, 1) - 1))).toBeLessThan(1e-12);
  expect(normalPointAt(0.5)).toBeCloseTo(0, 15);
});

// The reference library's points lose digits out there, its shares do not.
test("further out the reference library finds the share again below the point", () => {
  expect(worst(tinyShares.map((p) => cdf(normalPointAt(p), 0, 1) / p - 1))).toBeLessThan(1e-11);
});

test.each([
  [1, 0.841344746068543, "Abramowitz and Stegun, table 26.1"],
  [2, 0.977249868051821, "Abramowitz and Stegun, table 26.1"],
  [3, 0.99865010196837, "Abramowitz and Stegun, table 26.1"],
  [Infinity, 1, "all of it lies below"],
  [-Infinity, 0, "nothing lies below"],
])("below %s lie %s (%s)", (z, share) => {
  expect(normalShareBelow(z)).toBeCloseTo(share, 14);
});

test("the series and the continued fraction meet without a step", () => {
  for (const z of [3, -3]) {
    const slope = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    const rise = normalShareBelow(z + 1e-9) - normalShareBelow(z - 1e-9);
    expect(Math.abs(rise - 2e-9 * slope)).toBeLessThan(1e-15);
  }
});

test("a share between two points far out is not lost in the difference", () => {
  const expected = cdf(-9, 0, 1) - cdf(-10, 0, 1);
  expect(normalShareBetween(9, 10) / expected).toBeCloseTo(1, 10);
  expect(normalShareBetween(-10, -9) / expected).toBeCloseTo(1, 10);
  expect(normalShareBetween(-Infinity, Infinity)).toBe(1);
});
