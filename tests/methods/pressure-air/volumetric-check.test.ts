import { asksForVolumetricCheck } from "../../../src/methods/pressure-air/volumetric-check";

test.each([
  [0.8, undefined, "us", true],
  [0.7, undefined, "us", false],
  [0.3, 2, "us", true],
  [0.3, 2.25, "us", false],
  [undefined, 50, "si", true],
  [undefined, 75, "si", false],
  [undefined, undefined, "us", false],
] as const)(
  "a factor of %s % and a slump of %s in %s: %s (Kansas DOT KT-18; 50 mm is our own pair of 2 in)",
  (factor, slump, system, asks) => {
    expect(asksForVolumetricCheck(factor, slump, system)).toBe(asks);
  },
);
