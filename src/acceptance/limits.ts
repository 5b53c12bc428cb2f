import { exact } from "../measure/rounding";

/** A result against its specification. */
export type Verdict = "within" | "below" | "above";

/** Specification limits, in the unit of the result; either may be absent. */
export interface SpecLimits {
  readonly low?: number;
  readonly high?: number;
  /** Another limit is written down and cannot be read, so that no value is known to lie within. */
  readonly unread?: true;
}

/** A low and a high limit. */
export type LimitPair = Required<Pick<SpecLimits, "low" | "high">>;

/**
 * Compares a result with its limits; a result on a limit is within. Absolute method of ASTM E29: the
 * number is compared as it is, free of the noise of binary fractions: 0.1 + 0.2 does not exceed 0.3.
 *
 * @param value Result, in the unit of the limits.
 * @param low Lower limit; none when absent.
 * @param high Upper limit; none when absent.
 */
export function compareWithLimits(value: number, low?: number, high?: number): Verdict {
  if (low !== undefined && exact(value - low) < 0) return "below";
  if (high !== undefined && exact(value - high) > 0) return "above";
  return "within";
}

/** The verdict on a result; none where there is no limit to hold it against, or one that would decide is unread. */
export function verdictOn(value: number, { low, high, unread }: SpecLimits): Verdict | undefined {
  if (low === undefined && high === undefined) return undefined;
  const verdict = compareWithLimits(value, low, high);
  return verdict === "within" && unread ? undefined : verdict;
}
