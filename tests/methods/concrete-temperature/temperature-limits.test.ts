import { leastTemperature } from "../../../src/methods/concrete-temperature/temperature-limits";

test.each([
  [11.9, "us", 55],
  [12, "us", 50],
  [36, "us", 50],
  [36.1, "us", 45],
  [72, "us", 45],
  [73, "us", 40],
  [undefined, "us", 40],
  [200, "si", 13],
  [600, "si", 10],
  [1500, "si", 7],
  [2500, "si", 4],
] as const)(
  "a least dimension of %s in %s asks for %s (UFGS 03311)",
  (dimension, system, least) => {
    expect(leastTemperature(dimension, system)).toBe(least);
  },
);
