import { at, issue, type Issue } from "../measure/issue";
import {
  differenceAmongPercents,
  percentAsShare,
  shareAmongPercents,
} from "../measure/percent-as-share";
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
 *   `tolerance-negative` or `percent-as-share`.
 */
export function specLimits(
  target: number,
  tolerance: number = USUAL_TOLERANCE,
  above: number = tolerance,
): LimitPair | Issue {
  const share = percentsOfTarget(target, tolerance, above);
  if (share) return share;
  for (const [place, value] of Object.entries({ tolerance, "tolerance above": above })) {
    if (value < 0) return at(place, issue("tolerance-negative", { value }));
  }
  return { low: exact(target - tolerance), high: exact(target + above) };
}

/**
 * What is wrong with limits: the issue `limits-missing` when neither is given,
 * `limits-the-wrong-way-round`, or `percent-as-share` where some of them and of the results are shares
 * of one and others percent.
 *
 * @param results What is held against the limits, in their unit.
 */
export function unsoundLimits(
  { low, high }: SpecLimits,
  ...results: readonly (number | undefined)[]
): Issue | undefined {
  if (low === undefined && high === undefined) return issue("limits-missing");
  if (low !== undefined && high !== undefined && low > high) {
    return issue("limits-the-wrong-way-round", { low, high });
  }
  return shareAmongPercents(low, high, ...results);
}

/** A target that is a share of one beside tolerances in percent, or the other way round. */
function percentsOfTarget(target: number, below: number, above: number): Issue | undefined {
  return (
    at("target", percentAsShare(target) && shareAmongPercents(target, below, above)) ??
    at("tolerance", differenceAmongPercents(below, target)) ??
    at("tolerance above", differenceAmongPercents(above, target))
  );
}
