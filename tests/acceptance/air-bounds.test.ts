import fc from "fast-check";
import { airBounds, type AirBounds } from "../../src/acceptance/air-bounds";
import { compareWithLimits } from "../../src/acceptance/limits";
import { correctedAir, type CorrectedAir } from "../../src/methods/volumetric-air/corrected-air";
import { AIR_BOUNDS } from "../check-values/decisions";

test.each(AIR_BOUNDS)("%j against %j: %s to %s, %s (%s)", (known, limits, least, most, verdict) => {
  expect(airBounds(known, limits)).toEqual({ least, most, verdict });
});

test("whatever alcohol there was, the result lies within the bounds, and the verdict is the same", () => {
  const reading = fc.integer({ min: 8, max: 36 }).map((quarters) => quarters / 4);
  const alcohol = fc.record({
    amount: fc.integer({ min: 0, max: 80 }),
    unit: fc.constant("oz" as const),
  });
  fc.assert(
    fc.property(reading, fc.nat({ max: 4 }), alcohol, (final, cups, used) => {
      const bounds = airBounds({ reading: final, cups }, { low: 4.5, high: 7.5 }) as AirBounds;
      const { air } = correctedAir({ reading: final, cups, alcohol: used }) as CorrectedAir;
      expect(air).toBeGreaterThanOrEqual(bounds.least);
      expect(air).toBeLessThanOrEqual(bounds.most!);
      if (bounds.verdict) expect(compareWithLimits(air, 4.5, 7.5)).toBe(bounds.verdict);
    }),
  );
});
