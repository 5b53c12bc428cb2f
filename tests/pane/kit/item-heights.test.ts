import fc from "fast-check";
import { itemHeights } from "../../../src/pane/kit/item-heights";

test("before anything is measured every item has the guessed height", () => {
  const heights = itemHeights(3, 70);
  expect([0, 1, 2, 3].map(heights.topOf)).toEqual([0, 70, 140, 210]);
  expect([-5, 0, 69, 70, 209, 999].map(heights.indexAt)).toEqual([0, 0, 0, 1, 2, 2]);
});

test("measured heights move what lies below", () => {
  const heights = itemHeights(4, 70);
  heights.measured(new Map([[1, 100]]));
  expect([0, 1, 2, 3, 4].map(heights.topOf)).toEqual([0, 70, 170, 240, 310]);
});

test("an empty list has no height", () => {
  const heights = itemHeights(0, 70);
  expect(heights.topOf(0)).toBe(0);
  expect(heights.indexAt(10)).toBe(0);
});

test("the item at a distance is the one that reaches over it, whatever was measured", () => {
  const measured = fc.dictionary(fc.nat(29).map(String), fc.integer({ min: 1, max: 300 }));
  fc.assert(
    fc.property(measured, fc.nat(2000), (found, distance) => {
      const heights = itemHeights(30, 50);
      heights.measured(new Map(Object.entries(found).map(([i, height]) => [Number(i), height])));
      const index = heights.indexAt(distance);
      expect(heights.topOf(index)).toBeLessThanOrEqual(distance);
      if (index < 29) expect(heights.topOf(index + 1)).toBeGreaterThan(distance);
    }),
  );
});
