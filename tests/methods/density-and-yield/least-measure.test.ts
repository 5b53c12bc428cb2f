import { isTooSmall, leastMeasure } from "../../../src/methods/density-and-yield/least-measure";

const TABLE_1 = "from memory, ASTM C138 Table 1";

test.each([
  [1, 25, 0.2, 6],
  [1.5, 37.5, 0.4, 11],
  [2, 50, 0.5, 14],
  [3, 75, 1, 28],
  [4.5, 112, 2.5, 70],
  [6, 150, 3.5, 100],
])(`aggregate of %s in, %s mm needs %s ft³, %s L (${TABLE_1})`, (inches, mm, ft3, L) => {
  expect(leastMeasure({ size: inches, unit: "in" })).toMatchObject({ ft3, L });
  expect(leastMeasure({ size: mm, unit: "mm" })).toMatchObject({ ft3, L });
});

test(`a size between two rows takes the larger measure (${TABLE_1})`, () => {
  expect(leastMeasure({ size: 0.75, unit: "in" })).toMatchObject({ ft3: 0.2 });
  expect(leastMeasure({ size: 28, unit: "mm" })).toMatchObject({ L: 11 });
});

test(`beyond the table there is none (${TABLE_1})`, () => {
  expect(leastMeasure({ size: 8, unit: "in" })).toBeUndefined();
});

// 0.2 ft³ is 5.663 L, 1 ft³ is 28.317 L (0.3048 m a foot, exactly); a measure is known to about 0.1 %.
test.each([
  [5.66, { ft3: 0.2, L: 6 }, false],
  [6, { ft3: 0.2, L: 6 }, false],
  [5.6, { ft3: 0.2, L: 6 }, true],
  [27.98, { ft3: 1, L: 28 }, false],
  [27.9, { ft3: 1, L: 28 }, true],
  [0.999 * 28, { ft3: 1, L: 28 }, false],
])(
  "a measure of %d L is too small where %o is needed: %s (worked by hand)",
  (litres, least, small) => {
    expect(isTooSmall(litres, least)).toBe(small);
  },
);
