import fc from "fast-check";
import {
  expectedAir,
  expectedDensity,
} from "../../../src/methods/density-and-yield/density-from-air";
import { AIR_EXPECTED, DENSITY_EXPECTED } from "../../check-values/decisions";
import { expectAsPrinted } from "../../check-values/worked";

test.each(DENSITY_EXPECTED)(
  "%s at %s %%: with %s %% of air %s (%s)",
  (density, from, air, printed) => {
    expectAsPrinted(expectedDensity({ density, air: from }, air), printed);
  },
);

test.each(AIR_EXPECTED)(
  "%s at %s %%: a density of %s is %s %% (%s)",
  (density, air, now, printed) => {
    expectAsPrinted(expectedAir({ density, air }, now), printed);
  },
);

test("the one undoes the other", () => {
  const percent = fc.double({ min: 0.1, max: 20, noNaN: true });
  const density = fc.double({ min: 90, max: 160, noNaN: true });
  fc.assert(
    fc.property(density, percent, percent, (reference, from, air) => {
      const mix = { density: reference, air: from };
      expect(expectedAir(mix, expectedDensity(mix, air) as number)).toBeCloseTo(air, 8);
    }),
  );
});

test.each([
  [expectedDensity({ density: 0, air: 6 }, 5), "not-above-zero"],
  [expectedDensity({ density: 145, air: 100 }, 5), "air-takes-all"],
  [expectedDensity({ density: 145, air: 6 }, -1), "air-takes-all"],
  [expectedAir({ density: 145, air: 6 }, 2320), "density-not-by-air"],
])("what cannot be is said: %j", (given, id) => {
  expect(given).toMatchObject({ id });
});
