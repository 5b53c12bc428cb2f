import fc from "fast-check";
import { bowlVolume } from "../../../src/methods/apparatus/bowl-volume";
import { shareOfBowl } from "../../../src/methods/apparatus/share-of-bowl";
import { resultOf } from "../../check-values/result-of";

const CUBIC_FEET_PER_LITRE = 1 / 28.316846592;

test("a bowl of 2.12291 L is 0.074970 ft³, under 0.075 (derived: 2.12291 / 28.3168)", () => {
  const litres = resultOf(bowlVolume(2.1186, 21.1, "si"));
  expect(litres).toBeCloseTo(2.12291, 4);
  expect(litres * CUBIC_FEET_PER_LITRE).toBeCloseTo(0.07497, 6);
  expect(litres * CUBIC_FEET_PER_LITRE).toBeLessThan(0.075);
});

test("water weighed in pounds or kilograms gives one volume", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 100, noNaN: true }),
      fc.double({ min: 0, max: 40, noNaN: true }),
      (kilograms, celsius) => {
        const litres = resultOf(bowlVolume(kilograms, celsius, "si"));
        const cubicFeet = resultOf(bowlVolume(kilograms / 0.45359237, celsius * 1.8 + 32, "us"));
        expect(cubicFeet).toBeCloseTo(litres * CUBIC_FEET_PER_LITRE, 6);
      },
    ),
  );
});

test("the share of a bowl knows no unit", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.2, max: 10, noNaN: true }), (percent) => {
      const [millilitres, cubicFeet] = [2123.8, 0.075];
      expect(resultOf(shareOfBowl((percent * millilitres) / 100, millilitres))).toBeCloseTo(
        percent,
        9,
      );
      expect(resultOf(shareOfBowl((percent * cubicFeet) / 100, cubicFeet))).toBeCloseTo(percent, 9);
    }),
  );
});

test("a share beyond what a cell can hold is said", () => {
  expect(shareOfBowl(1e300, 1e-10)).toMatchObject({ id: "result-beyond-a-cell" });
});
