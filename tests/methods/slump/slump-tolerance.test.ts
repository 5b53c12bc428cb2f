import { slumpTolerance } from "../../../src/methods/slump/slump-tolerance";

// ASTM C94, tolerances of a nominal slump, the standard's own pairs (from memory).
test.each([
  [1, "us", 0.5],
  [2, "us", 0.5],
  [2.25, "us", 1],
  [4, "us", 1],
  [4.25, "us", 1.5],
  [8, "us", 1.5],
  [25, "si", 15],
  [50, "si", 15],
  [55, "si", 25],
  [100, "si", 25],
  [105, "si", 40],
  [200, "si", 40],
] as const)("a nominal slump of %d (%s) may be off by %d", (nominal, system, tolerance) => {
  expect(slumpTolerance(nominal, system)).toBe(tolerance);
});
