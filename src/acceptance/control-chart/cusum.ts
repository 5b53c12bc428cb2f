import { at, issue, type Issue } from "../../measure/issue";
import { exact } from "../../measure/rounding";

/** Sums after one result and what they signal. */
export interface CusumPoint {
  /** How far the results have run above the target, allowance taken off; never below 0. */
  readonly high: number;
  /** How far they have run below it. */
  readonly low: number;
  /** Which sum lies beyond the decision value, if any. */
  readonly signal: "high" | "low" | undefined;
}

/**
 * Cumulative sums of a series, high and low, that tell a small shift from the target early.
 *
 * @param values Results in the order in which they were made.
 * @param target Where the results should lie.
 * @param k Allowance, in the unit of the results: half the shift that matters; 0 or more.
 * @param h Decision value, in the unit of the results: a sum beyond it is a signal; above 0.
 * @returns A point for each result; the issue `allowance-negative` or `decision-not-above-zero`.
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3, tabular form.
 */
export function cusum(
  values: readonly number[],
  target: number,
  k: number,
  h: number,
): readonly CusumPoint[] | Issue {
  if (k < 0) return at("k", issue("allowance-negative", { value: k }));
  if (!(h > 0)) return at("h", issue("decision-not-above-zero", { value: h }));
  let high = 0;
  let low = 0;
  return values.map((value) => {
    high = Math.max(0, exact(high + value - target - k));
    low = Math.max(0, exact(low + target - k - value));
    return { high, low, signal: high > h ? "high" : low > h ? "low" : undefined };
  });
}
