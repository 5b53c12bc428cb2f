import { compareWithLimits, type SpecLimits } from "./limits";

/** What the check-test rule says about a load. */
export type AcceptanceDecision = "accept" | "check test" | "reject";

/**
 * Decides on a load by the check-test rule: a result outside the limits is checked at once on
 * another portion of the same sample, and a second failure fails the concrete. By this rule the two
 * results are not averaged; `disposition` knows others.
 *
 * @param first First result, in the unit of the limits.
 * @param limits Either may be absent.
 * @param check Result of the check test; absent when not made yet. Not looked at when the first
 *   result is within.
 * @see ASTM C94, as quoted in trade articles; C94-98.
 */
export function checkTestDecision(
  first: number,
  { low, high }: SpecLimits,
  check?: number,
): AcceptanceDecision {
  if (compareWithLimits(first, low, high) === "within") return "accept";
  if (check === undefined) return "check test";
  return compareWithLimits(check, low, high) === "within" ? "accept" : "reject";
}
