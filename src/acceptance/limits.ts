/** A result against its specification. */
export type Verdict = "within" | "below" | "above";

/**
 * Compares a result with its limits; a result on a limit is within. Absolute method of ASTM E29: the
 * number is compared as it is.
 *
 * @param value Result, in the unit of the limits.
 * @param low Lower limit; none when absent.
 * @param high Upper limit; none when absent.
 */
export function compareWithLimits(value: number, low?: number, high?: number): Verdict {
  if (low !== undefined && value < low) return "below";
  if (high !== undefined && value > high) return "above";
  return "within";
}
