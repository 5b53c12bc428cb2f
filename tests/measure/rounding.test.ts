import Big from "big.js";
import fc from "fast-check";
import { exact, notAStep, roundToStep } from "../../src/measure/rounding";
import { Random } from "../simulation/random";

const DERIVED = "derived from ASTM E29: half to the even multiple";

test.each([
  [5.125, 0.25, 5, DERIVED],
  [5.375, 0.25, 5.5, DERIVED],
  [5.625, 0.25, 5.5, DERIVED],
  [5.875, 0.25, 6, DERIVED],
  [-5.125, 0.25, -5, DERIVED],
  [45.75, 0.1, 45.8, "an Arkansas sampling manual"],
  [45.45, 0.1, 45.4, "an Arkansas sampling manual"],
  [45.45001, 0.1, 45.5, "an Arkansas sampling manual"],
  [6025, 50, 6000, "from memory, ASTM E29"],
  [6075, 50, 6100, "from memory, ASTM E29"],
  [5.95, 0.25, 6, "derived: 5.95 − 5.75 is more than 0.125"],
  [0.1 + 0.2, 0.2, 0.4, `${DERIVED}; 0.3 is 1.5 steps, and 2 is even`],
  [0.15, 0.1, 0.2, `${DERIVED}; 0.15 is 1.5 steps`],
  [0.25, 0.1, 0.2, `${DERIVED}; 0.25 is 2.5 steps`],
  [1.005, 0.01, 1, `${DERIVED}; 100.5 steps, and 100 is even`],
  [0, 0.25, 0, DERIVED],
  [7.15, 0, 7.15, "0 leaves the value as it is (our own rule)"],
])("%s in steps of %s is %s (%s)", (value, step, rounded) => {
  expect(roundToStep(value, step)).toBe(rounded);
});

test.each([-0.25, NaN, Infinity])("a step of %s is refused", (step) => {
  expect(notAStep(step)).toMatchObject({ id: "step-not-positive" });
});

const steps = fc.constantFrom(1, 5, 10, 25, 50, 100, 250);

test("is the nearest multiple in whole hundredths, half to even", () => {
  fc.assert(
    fc.property(fc.integer({ min: -100_000, max: 100_000 }), steps, (hundredths, step) => {
      // The same in integers: the oracle needs no decimals at all.
      const below = Math.floor(hundredths / step);
      const rest = hundredths - below * step;
      const up = rest * 2 > step || (rest * 2 === step && below % 2 !== 0);
      expect(roundToStep(hundredths / 100, step / 100)).toBeCloseTo(
        ((below + (up ? 1 : 0)) * step) / 100,
        10,
      );
    }),
  );
});

test("rounding twice changes nothing, and order is kept", () => {
  const values = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(values, values, steps, (one, other, step) => {
      const [a, b] = [roundToStep(one, step / 100), roundToStep(other, step / 100)];
      expect(roundToStep(a, step / 100)).toBe(a);
      if (one <= other) expect(a).toBeLessThanOrEqual(b);
    }),
  );
});

test("binary noise is taken out of differences", () => {
  expect(0.35 - 0.1).not.toBe(0.25);
  expect(exact(0.35 - 0.1)).toBe(0.25);
});

/** Half to even by a decimal library, on the 15 digits that a cell shows. */
function decimally(value: number, step: number): number {
  const unit = new Big(step.toPrecision(15));
  const multiple = new Big(value.toPrecision(15)).div(unit).round(0, Big.roundHalfEven);
  return multiple.times(unit).toNumber() + 0;
}

test("whole billionths give what decimals give, ties and all", () => {
  const random = new Random(29);
  const STEPS = [0.25, 0.1, 0.5, 0.05, 0.01, 0.001, 1, 5, 50, 0.75, 0.3, 1e-9, 3e-9, 0.125];
  const differ: [number, number][] = [];
  for (let i = 0; i < 100_000; i++) {
    const step = random.one(STEPS);
    // Ties, values a billionth beside them, values of some places, and values of any size.
    const value = random.one([
      (random.whole(-20_001, 20_001) / 2) * step,
      Number(((random.whole(-20_001, 20_001) / 2) * step + 1e-9).toFixed(9)),
      random.whole(-1_000_000, 1_000_000) / 10 ** random.whole(0, 9),
      (random.next() - 0.5) * 10 ** random.whole(-8, 8),
    ]);
    if (roundToStep(value, step) !== decimally(value, step)) differ.push([value, step]);
  }
  expect(differ).toEqual([]);
});
