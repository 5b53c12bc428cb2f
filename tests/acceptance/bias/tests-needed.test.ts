import tCdf from "@stdlib/stats-base-dists-t-cdf";
import { biasOf, type Bias } from "../../../src/acceptance/bias/bias";
import { testsNeeded } from "../../../src/acceptance/bias/tests-needed";
import { normalDeviates } from "../../simulation/normal-deviates";

/** Two groups of variance 1, so that the scatter is 2. */
const forDifference = (difference: number) => testsNeeded(difference, 2);

test.each<[difference: number, needed: number, source: string]>([
  [0.2, 393.4, "R's power.t.test, from memory; Cohen, A power primer, 1992, Table 2: 393"],
  [0.5, 63.77, "R's power.t.test, from memory; Cohen, A power primer, 1992, Table 2: 64"],
  [0.8, 25.52, "R's power.t.test, from memory; Cohen, A power primer, 1992, Table 2: 26"],
  [1, 16.71, "R's power.t.test, from memory"],
])("a difference of %f deviations: about %f (%s)", (difference, needed) => {
  expect(Math.abs(forDifference(difference) - needed)).toBeLessThan(0.07);
});

test("by hand: 0.5 % seen, 0.4 % each: (1.95996 + 0.84162)² × 0.32 / 0.25 + 0.9604", () => {
  expect(testsNeeded(0.5, 0.32)).toBeCloseTo(7.84888 * 1.28 + 0.96036, 3);
  expect(testsNeeded(-0.5, 0.32)).toBe(testsNeeded(0.5, 0.32));
});

test("no difference is never told from chance", () => {
  expect(testsNeeded(0, 1)).toBe(Infinity);
});

test("with so many tests made up, the difference is told about four times in five", () => {
  const deviate = normalDeviates(20_260_601);
  const REPEATS = 1500;
  const count = Math.ceil(forDifference(0.8));
  let told = 0;
  for (let repeat = 0; repeat < REPEATS; repeat += 1) {
    const tests = Array.from({ length: 2 * count }, (_, i) => ({
      value: 6 + deviate() + (i < count ? 0.8 : 0),
      who: i < count ? "A" : "B",
      mix: "M",
    }));
    const [a] = biasOf(tests) as readonly Bias[];
    if (2 * tCdf(-Math.abs(a!.t!), a!.freedom!) < 0.05) told += 1;
  }
  // About 81 % with 26 tests each (R, from memory); three deviations of 1,500 trials are 3.1 %.
  expect(Math.abs(told / REPEATS - 0.807)).toBeLessThan(0.031);
});

test("the scatter of a line is the sum of both variances", () => {
  // By hand: 6, 7, 8 have a variance of 1, 5 and 7 one of 2.
  const tests = [6, 7, 8].map((value) => ({ value, who: "A", mix: "M" }));
  const others = [5, 7].map((value) => ({ value, who: "B", mix: "M" }));
  const [a] = biasOf([...tests, ...others]) as readonly Bias[];
  expect(a!.scatter).toBeCloseTo(3, 12);
});
