/** Mean range of a sample of 2 or 3 from a normal distribution, in standard deviations. */
export const RANGE_IN_DEVIATIONS: Readonly<Record<number, number>> = { 2: 1.128, 3: 1.693 };

/**
 * Within-test standard deviation, from the ranges of companion cylinders.
 *
 * Tests of two and of three cylinders may be mixed: each range counts by its own divisor.
 *
 * @param tests The cylinders of each test, 2 or 3, in one unit of strength.
 * @returns In the same unit.
 * @see ACI 214R, within-test variation: mean range over d2.
 */
export function withinTestDeviation(tests: readonly (readonly number[])[]): number {
  const deviations = tests.map(
    (cylinders) =>
      (Math.max(...cylinders) - Math.min(...cylinders)) / RANGE_IN_DEVIATIONS[cylinders.length]!,
  );
  return deviations.reduce((sum, deviation) => sum + deviation, 0) / deviations.length;
}
