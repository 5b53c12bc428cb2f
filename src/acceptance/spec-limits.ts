import { exact } from "../measure/rounding";
import { Problem } from "../measure/problem";
import type { SpecLimits } from "./limits";

/** Tolerance on air content as delivered, % either way (from memory, ACI 318-19; UFGS 03300). */
export const USUAL_TOLERANCE = 1.5;

/**
 * Limits from a target and what the result may differ from it.
 *
 * @param target Specified value.
 * @param tolerance How far a result may lie below it, and above it too unless `above` is given.
 * @param above How far a result may lie above it.
 * @returns Limits in the unit of the target. Below zero is left as it comes out.
 * @throws Problem `tolerance-negative`.
 */
export function specLimits(
  target: number,
  tolerance: number = USUAL_TOLERANCE,
  above: number = tolerance,
): Required<SpecLimits> {
  for (const value of [tolerance, above]) {
    if (value < 0) throw new Problem("tolerance-negative", { value });
  }
  return { low: exact(target - tolerance), high: exact(target + above) };
}

/**
 * Holds limits to what limits can be.
 *
 * @returns The same limits.
 * @throws Problem `limits-missing` when neither is given, `limits-the-wrong-way-round`.
 */
export function soundLimits({ low, high }: SpecLimits): SpecLimits {
  if (low === undefined && high === undefined) throw new Problem("limits-missing");
  if (low !== undefined && high !== undefined && low > high) {
    throw new Problem("limits-the-wrong-way-round", { low, high });
  }
  return { low, high };
}
