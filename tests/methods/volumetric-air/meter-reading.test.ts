import {
  nearestGraduations,
  notAMeterReading,
  onGraduation,
  readingsAgree,
} from "../../../src/methods/volumetric-air/meter-reading";

/* The scale is read to a quarter percent (a meter maker's manual, 2019, describing C173). */

test.each([
  [5.1, 5, 5.25],
  [5.3, 5.25, 5.5],
  [0.1, 0, 0.25],
  [8.99, 8.75, 9],
])("%d lies between the graduations %d and %d", (reading, below, above) => {
  expect(onGraduation(reading)).toBe(false);
  expect(nearestGraduations(reading)).toEqual({ below, above });
});

test.each([0, 0.25, 5.5, 8.75, 9])("%d is a graduation", (reading) => {
  expect(onGraduation(reading)).toBe(true);
});

test.each([
  [5.5, 5.75, true],
  [5.75, 5.5, true],
  [5.5, 6, false],
  // A difference of 0.25 that binary fractions make a little more.
  [0.35, 0.6, true],
])("%d and %d agree: %s (within 0.25 %%)", (one, other, agree) => {
  expect(readingsAgree(one, other)).toBe(agree);
});

test.each<[number, number | undefined, string | undefined]>([
  [0, undefined, undefined],
  [9, undefined, undefined],
  [9.25, undefined, "reading-beyond-scale"],
  [9.25, 10, undefined],
  [-0.25, undefined, "reading-negative"],
  [0.0575, undefined, "reading-as-share"],
])("%d on a scale that ends at %s: %s", (reading, end, id) => {
  expect(notAMeterReading(reading, end)?.id).toBe(id);
});
