import fc from "fast-check";
import { exact, notAStep, roundToStep } from "../../src/measure/rounding";

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
