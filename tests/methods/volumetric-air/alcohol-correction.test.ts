import fc from "fast-check";
import {
  alcoholCorrection,
  type AlcoholUnit,
} from "../../../src/methods/volumetric-air/alcohol-correction";
import { roundToStep } from "../../../src/measure/rounding";
import { BETWEEN_ROWS, CORRECTION_ROWS } from "../../check-values/volumetric-air";
import { resultOf } from "../../check-values/result-of";

const UNITS: readonly AlcoholUnit[] = ["pt", "oz", "L"];

test.each(CORRECTION_ROWS)(
  "row of %s pt = %s oz = %s L subtracts %s (%s)",
  (pt, oz, L, subtract) => {
    const amounts = { pt, oz, L };
    for (const unit of UNITS) {
      expect(resultOf(alcoholCorrection({ amount: amounts[unit], unit }))).toEqual({
        subtract,
        interpolated: false,
      });
    }
  },
);

test.each(BETWEEN_ROWS)("%s %s subtracts %s (%s)", (amount, unit, subtract) => {
  expect(resultOf(alcoholCorrection({ amount, unit })).subtract).toBe(subtract);
});

test.each([
  [5.01, "pt", "alcohol-beyond-table"],
  [80.5, "oz", "alcohol-beyond-table"],
  [2.41, "L", "alcohol-beyond-table"],
  [-1, "oz", "alcohol-negative"],
] as const)("%s %s is refused with %s", (amount, unit, id) => {
  expect(alcoholCorrection({ amount, unit })).toMatchObject({ id });
});

test("once rounded to the quarter percent, the rows act as 0, 0.25, 0.50 and 1.00 (derived: 0.9 lies nearer to 1.00 than to 0.75)", () => {
  const acts = [
    [2, 0],
    [3, 0.25],
    [4, 0.5],
    [5, 1],
  ] as const;
  fc.assert(
    fc.property(
      fc.integer({ min: 4, max: 36 }),
      fc.constantFrom(...acts),
      (quarters, [amount, acting]) => {
        const reading = quarters / 4;
        const { subtract } = resultOf(alcoholCorrection({ amount, unit: "pt" }));
        expect(roundToStep(reading - subtract, 0.25)).toBe(reading - acting);
      },
    ),
  );
});

test("more alcohol never subtracts less", () => {
  const hundredths = fc.integer({ min: 0, max: 500 });
  fc.assert(
    fc.property(hundredths, hundredths, (one, other) => {
      const [less, more] = [Math.min(one, other) / 100, Math.max(one, other) / 100];
      expect(
        resultOf(alcoholCorrection({ amount: less, unit: "pt" })).subtract,
      ).toBeLessThanOrEqual(resultOf(alcoholCorrection({ amount: more, unit: "pt" })).subtract);
    }),
  );
});
