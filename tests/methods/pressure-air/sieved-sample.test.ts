import fc from "fast-check";
import { fullMixtureAir, mortarAir } from "../../../src/methods/pressure-air/sieved-sample";

const percent = fc.double({ min: 0.5, max: 20, noNaN: true });
const volume = fc.double({ min: 1, max: 30, noNaN: true });
const share = fc.double({ min: 0.05, max: 1, noNaN: true });

/** The air itself, as a volume: the sieved sample is what passes and the air in it. */
const volumeOfAir = (air: number, passing: number) => (air * passing) / (100 - air);

test("the full mixture holds the air of the sieved sample and the coarse aggregate besides", () => {
  fc.assert(
    fc.property(percent, volume, volume, (air, passing, coarse) => {
      const bubbles = volumeOfAir(air, passing);
      const expected = (100 * bubbles) / (passing + coarse + bubbles);
      expect(fullMixtureAir(air, passing, coarse)).toBeCloseTo(expected, 9);
    }),
  );
});

test("the mortar holds all the air of the sieved sample", () => {
  fc.assert(
    fc.property(percent, volume, share, (air, passing, part) => {
      const bubbles = volumeOfAir(air, passing);
      const expected = (100 * bubbles) / (part * passing + bubbles);
      expect(mortarAir(air, passing, part * passing)).toBeCloseTo(expected, 9);
    }),
  );
});
