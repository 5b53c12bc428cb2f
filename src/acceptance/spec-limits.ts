import { at, issue, type Issue } from "../measure/issue";
import { exact } from "../measure/rounding";
import type { LimitPair, SpecLimits } from "./limits";

/** Tolerance on air content as delivered, % either way (from memory, ACI 318-19; UFGS 03300). */
export const USUAL_TOLERANCE = 1.5;

/**
 * Limits from a target and what the result may differ from it.
 *
 * @param target Specified value.
 * @param tolerance How far a result may lie below it, and above it too unless `above` is given.
 * @param above How far a result may lie above it.
 * @returns Limits in the unit of the target. Below zero is left as it comes out. The issue
 *   `tolerance-negative`.
 */
export function specLimits(
  target: number,
  tolerance: number = USUAL_TOLERANCE,
  above: number = tolerance,
): LimitPair | Issue {
  for (const [place, value] of Object.entries({ tolerance, "tolerance above": above })) {
    if (value < 0) return at(place, issue("tolerance-negative", { value }));
  }
  return { low: exact(target - tolerance), high: exact(target + above) };
}

/**
 * What is wrong with limits: the issue `limits-missing` when neither is given, or
 * `limits-the-wrong-way-round`.
 */
export function unsoundLimits({ low, high }: SpecLimits): Issue | undefined {
  if (low === undefined && high === undefined) return issue("limits-missing");
  if (low === undefined || high === undefined || low <= high) return undefined;
  return issue("limits-the-wrong-way-round", { low, high });
}
