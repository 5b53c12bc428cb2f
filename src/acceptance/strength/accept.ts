import { exact } from "../../measure/rounding";
import type { UnitSystem } from "../../measure/unit-system";
import { leastSingleTest } from "./criteria";

/** What a strength test says: accepted, or which of the two criteria it fails. */
export type StrengthVerdict =
  | "accepted"
  | "mean of three too low"
  | "single test too low"
  | "single test and mean of three too low";

/** How many consecutive tests are averaged. */
export const CONSECUTIVE = 3;

/**
 * Judges strength tests in the order in which they were made.
 *
 * A test fails when it falls too far below the specified strength, or when the mean of it and the two
 * tests before it is below the specified strength. The first two tests have no mean of three yet.
 *
 * @param results Strength tests, each the mean of its cylinders, psi or MPa; `undefined` for one that
 *   was made but cannot be read.
 * @param specified Specified strength, in the same unit.
 * @returns A verdict for each test; `undefined` where a result that it takes in cannot be read.
 * @see ACI 318-19, 26.12.3.1 (trade articles quoting it).
 */
export function judgeStrength(
  results: readonly (number | undefined)[],
  specified: number,
  system: UnitSystem,
): (StrengthVerdict | undefined)[] {
  const least = exact(leastSingleTest(specified, system));
  return results.map((result, i) => {
    const upToHere = results.slice(Math.max(0, i + 1 - CONSECUTIVE), i + 1);
    if (result === undefined || !upToHere.every(isRead)) return undefined;
    return verdictOn(
      result < least,
      upToHere.length === CONSECUTIVE && meanOf(upToHere) < specified,
    );
  });
}

function verdictOn(singleTooLow: boolean, meanTooLow: boolean): StrengthVerdict {
  if (singleTooLow && meanTooLow) return "single test and mean of three too low";
  if (singleTooLow) return "single test too low";
  return meanTooLow ? "mean of three too low" : "accepted";
}

function isRead(result: number | undefined): result is number {
  return result !== undefined;
}

function meanOf(results: readonly number[]): number {
  return exact(results.reduce((sum, result) => sum + result, 0) / results.length);
}
