import fc from "fast-check";
import quantile from "@stdlib/stats-base-dists-normal-quantile";
import { mean } from "simple-statistics";
import { judgeStrength } from "../../../src/acceptance/strength/accept";
import { fewTestsFactor, requiredStrength } from "../../../src/acceptance/strength/required";
import { withinTestDeviation } from "../../../src/acceptance/strength/within-test";
import { FEW_TESTS } from "../../check-values/strength";
import { resultOf } from "../../check-values/result-of";

const psi = fc.integer({ min: 3000, max: 5200 });

test.each(FEW_TESTS)("a deviation from %s tests is raised %s times (%s)", (tests, factor) => {
  expect(fewTestsFactor(tests)).toBeCloseTo(factor, 9);
});

test("f′cr allows 1 failure in 100 (derived: 2.33 is the 99 % quantile, 1.34 is that over √3)", () => {
  const z = quantile(0.99, 0, 1);
  const roundedUp = (value: number) => Math.ceil(value * 100) / 100;
  const forMean = (resultOf(requiredStrength(4000, 100, 30, "us")) - 4000) / 100;
  const forSingle = (resultOf(requiredStrength(4000, 1000, 30, "us")) - 3500) / 1000;
  expect(forSingle).toBeCloseTo(roundedUp(z), 9);
  expect(forMean).toBeCloseTo(Math.round((z / Math.sqrt(3)) * 100) / 100, 9);
});

test("the mean of three is that of a reference library", () => {
  fc.assert(
    fc.property(fc.array(psi, { minLength: 3, maxLength: 12 }), (results) => {
      const said = judgeStrength(results, 4000, "us");
      results.forEach((result, i) => {
        const tooLow = i >= 2 && mean(results.slice(i - 2, i + 1)) < 4000;
        expect(said[i]!.includes("mean of three")).toBe(tooLow);
        expect(said[i]!.includes("single test")).toBe(result < 3500);
      });
    }),
  );
});

test("within-test deviations of pairs and triples estimate that of a normal sample", () => {
  // A seeded generator of our own (Lehmer 1951, multiplier 48,271), so that every run is the same.
  let state = 20_260_531;
  const deviate = () => {
    state = (state * 48_271) % 2_147_483_647;
    return quantile(state / 2_147_483_647, 4000, 150);
  };
  const tests = (cylinders: number) =>
    Array.from({ length: 20_000 }, () => Array.from({ length: cylinders }, deviate));
  // 20,000 ranges know their mean to about 0.5 %.
  expect(withinTestDeviation(tests(2)) / 150).toBeCloseTo(1, 1.7);
  expect(withinTestDeviation(tests(3)) / 150).toBeCloseTo(1, 1.7);
});
