import { at, isIssue, issue, type Issue } from "../../measure/issue";
import { LIMIT_DEVIATIONS, seriesSpread } from "./individuals-limits";

/** Weight of the newest result, as in the handbook's example; 0.2 to 0.3 is usual. */
export const USUAL_LAMBDA = 0.3;

/** What an EWMA chart may be told besides the results. */
export interface EwmaSettings {
  /** Weight of the newest result, above 0 and at most 1. */
  readonly lambda?: number;
  /** Where the smoothing starts and the limits are centred; the mean of the results when absent. */
  readonly target?: number;
  /** Standard deviation of one result; from the moving range when absent. */
  readonly deviation?: number;
}

/** An exponentially weighted moving average with its control limits. */
export interface EwmaChart {
  /** One for each result. */
  readonly smoothed: readonly number[];
  readonly lower: number;
  readonly upper: number;
}

/**
 * Smooths a series: each result counts with the weight λ, what was before it with the rest.
 *
 * @param values Results in the order in which they were made.
 * @returns Smoothed results, and the limits target ± 3 s √(λ / (2 − λ)) that hold after some results.
 *   The issue `lambda-out-of-range`, `deviation-not-above-zero` or `chart-needs-two-values`.
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4.
 */
export function ewmaChart(
  values: readonly number[],
  { lambda = USUAL_LAMBDA, target, deviation }: EwmaSettings = {},
): EwmaChart | Issue {
  if (!(lambda > 0 && lambda <= 1)) {
    return at("lambda", issue("lambda-out-of-range", { value: lambda }));
  }
  if (deviation !== undefined && !(deviation > 0)) {
    return at("deviation", issue("deviation-not-above-zero", { value: deviation }));
  }
  const given = target !== undefined && deviation !== undefined;
  const own = given ? { mean: target, deviation } : seriesSpread(values);
  if (isIssue(own)) return own;
  const centre = target ?? own.mean;
  const spread = deviation ?? own.deviation;
  let last = centre;
  const smoothed = values.map((value) => (last = lambda * value + (1 - lambda) * last));
  const reach = LIMIT_DEVIATIONS * spread * Math.sqrt(lambda / (2 - lambda));
  return { smoothed, lower: centre - reach, upper: centre + reach };
}
