import fc from "fast-check";
import {
  evaporation,
  TAKE_CARE_FROM,
  type Weather,
} from "../../../src/methods/evaporation/evaporation";
import { resultOf } from "../../check-values/result-of";

const weather: fc.Arbitrary<Weather> = fc.record({
  concrete: fc.double({ min: 40, max: 110, noNaN: true }),
  air: fc.double({ min: 20, max: 120, noNaN: true }),
  humidity: fc.double({ min: 2, max: 100, noNaN: true }),
  wind: fc.double({ min: 0, max: 40, noNaN: true }),
});

const metric = ({ concrete, air, humidity, wind }: Weather): Weather => ({
  concrete: (concrete - 32) / 1.8,
  air: (air - 32) / 1.8,
  humidity,
  wind: wind * 1.609344,
});

/** 1 lb/ft² in kg/m², exact by definition of pound and foot. */
const KG_M2 = 0.45359237 / 0.3048 ** 2;

// Uno's SI form rounds 5.275, 17.778 and 4.02336 to 5, 18 and 4: no conversion, but near it.
test("where care is due, the SI form reads a little less than the US form", () => {
  fc.assert(
    fc.property(weather, (now) => {
      const inUs = resultOf(evaporation(now, "us")) * KG_M2;
      if (inUs < 0.5) return;
      const inSi = resultOf(evaporation(metric(now), "si"));
      expect(inSi / inUs).toBeGreaterThan(0.94);
      expect(inSi / inUs).toBeLessThan(0.99);
    }),
  );
});

test("more wind never dries less, more moisture never dries more, and no rate is below 0", () => {
  fc.assert(
    fc.property(weather, (now) => {
      const rate = resultOf(evaporation(now, "us"));
      expect(rate).toBeGreaterThanOrEqual(0);
      expect(resultOf(evaporation({ ...now, wind: now.wind + 5 }, "us"))).toBeGreaterThanOrEqual(
        rate,
      );
      expect(resultOf(evaporation({ ...now, humidity: 100 }, "us"))).toBeLessThanOrEqual(rate);
    }),
  );
});

test("care begins at 0.20 lb/ft²/h, 1.0 kg/m²/h (retarder literature)", () => {
  expect(TAKE_CARE_FROM).toEqual({ us: 0.2, si: 1 });
});
