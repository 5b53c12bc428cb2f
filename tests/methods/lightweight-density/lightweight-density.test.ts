import fc from "fast-check";
import { calculatedOvenDryDensity } from "../../../src/methods/lightweight-density/calculated-oven-dry";
import { equilibriumDensity } from "../../../src/methods/lightweight-density/equilibrium";
import {
  measuredEquilibriumDensity,
  measuredOvenDryDensity,
} from "../../../src/methods/lightweight-density/measured-on-specimen";
import { resultOf } from "../../check-values/result-of";

test("a batch twice as large has the same oven-dry density", () => {
  const mass = fc.double({ min: 300, max: 1500, noNaN: true });
  fc.assert(
    fc.property(mass, mass, mass, (fine, coarse, cementitious) => {
      const batch = { fine, coarse, cementitious, volume: 27 };
      const twice = {
        fine: 2 * fine,
        coarse: 2 * coarse,
        cementitious: 2 * cementitious,
        volume: 54,
      };
      expect(resultOf(calculatedOvenDryDensity(twice, "us"))).toBeCloseTo(
        resultOf(calculatedOvenDryDensity(batch, "us")),
        9,
      );
    }),
  );
});

test("a specimen as dense as water displaces its own mass (ASTM C567-11, equations 1 and 2)", () => {
  const masses = { dried: 5, saturated: 8, suspended: 3 };
  expect(measuredEquilibriumDensity(masses, "si")).toBe(997);
  expect(measuredEquilibriumDensity(masses, "us")).toBe(62.3);
  expect(measuredOvenDryDensity(masses, "si")).toBe(997);
  expect(measuredOvenDryDensity(masses, "us")).toBe(62.3);
});

test.each([
  [110.49, "us", 113.49],
  [1769.4, "si", 1819.4],
] as const)("%s oven-dry in %s is %s at equilibrium (ASTM C567-11)", (ovenDry, system, moist) => {
  expect(equilibriumDensity(ovenDry, system)).toBeCloseTo(moist, 9);
});
