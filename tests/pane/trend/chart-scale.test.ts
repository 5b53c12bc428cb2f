import fc from "fast-check";
import { roundNumbers } from "../../../src/pane/trend/chart-scale";

test.each([
  [0, 10, 6, 0, [0, 2, 4, 6, 8, 10]],
  [3.5, 11, 5, 0, [4, 6, 8, 10]],
  [5.1, 5.6, 4, 0, [5.2, 5.4, 5.6]],
  [1, 3, 10, 1, [1, 2, 3]],
  [1, 50_000, 6, 1, [10_000, 20_000, 30_000, 40_000, 50_000]],
])("from %d to %d with room for %d: %j (by hand)", (low, high, most, least, numbers) => {
  expect(roundNumbers(low, high, most, least)).toEqual(numbers);
});

test("numbers of an axis lie on it, in order, and no more than there is room for", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -100, max: 100, noNaN: true }),
      fc.double({ min: 0.5, max: 1e5, noNaN: true }),
      fc.integer({ min: 2, max: 20 }),
      (low, span, most) => {
        const numbers = roundNumbers(low, low + span, most);
        expect(numbers.length).toBeLessThanOrEqual(most);
        numbers.forEach((number, i) => {
          expect(number).toBeGreaterThanOrEqual(low - span * 1e-6);
          expect(number).toBeLessThanOrEqual(low + span * (1 + 1e-6));
          if (i > 0) expect(number).toBeGreaterThan(numbers[i - 1]!);
        });
      },
    ),
  );
});
