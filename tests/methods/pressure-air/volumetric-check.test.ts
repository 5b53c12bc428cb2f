import { volumetricCheck } from "../../../src/methods/pressure-air/volumetric-check";

test.each([
  [0.8, undefined, "us", "due"],
  [0.7, undefined, "us", "not due"],
  [0.9, 1, "us", "due"],
  [0.3, 2, "us", "may be due"],
  [0.3, 2.25, "us", "not due"],
  [undefined, 50, "si", "may be due"],
  [undefined, 75, "si", "not due"],
  [undefined, undefined, "us", "not due"],
] as const)(
  "a factor of %s % and a slump of %s in %s: %s (Kansas DOT KT-18; 50 mm is our own pair of 2 in)",
  (factor, slump, system, check) => {
    expect(volumetricCheck(factor, slump, system)).toBe(check);
  },
);
