import {
  ACCEPTABLE_RANGE,
  cylinderSizeNamed,
  LEAST_CYLINDERS,
  rangeOfCylinders,
} from "../../../src/methods/specimens/cylinders";

test.each([
  ["6x12", "6 × 12 in"],
  ["6 × 12 in", "6 × 12 in"],
  ["150 by 300 mm", "6 × 12 in"],
  ["152 x 305", "6 × 12 in"],
  ["12 x 6", "6 × 12 in"],
  ["4x8", "4 × 8 in"],
  ["100 mm × 200 mm", "4 × 8 in"],
  ["102x203", "4 × 8 in"],
  ["4.0 x 8.0 in", "4 × 8 in"],
  // No size of the strength test.
  ["3x6", undefined],
  ["4.25 x 8.5", undefined],
  ["64 x 128", undefined],
  ["cube", undefined],
  ["", undefined],
])("%j names %j (the nominal sizes of the strength test, ACI 318-19 26.12.1)", (text, size) => {
  expect(cylinderSizeNamed(text)).toBe(size);
});

test("a strength test is the mean of two large or three small cylinders (ACI 318-19 26.12.1)", () => {
  expect(LEAST_CYLINDERS).toEqual({ "6 × 12 in": 2, "4 × 8 in": 3 });
});

test("how far companion cylinders may lie apart (ASTM C39, from memory)", () => {
  expect(ACCEPTABLE_RANGE).toEqual({
    "6 × 12 in": { 2: 8, 3: 9.5 },
    "4 × 8 in": { 2: 9, 3: 10.6 },
  });
});

test.each([
  // (4200 − 3800) / 4000
  [[3800, 4200], 10],
  // (30 − 27) / 28.5; and in another order
  [[30, 28.5, 27], 10.526315789],
  [[27, 30, 28.5], 10.526315789],
  [[4000, 4000], 0],
])("%j lie %d %% of their mean apart (by hand)", (strengths, percent) => {
  expect(rangeOfCylinders(strengths)).toBeCloseTo(percent, 8);
});
