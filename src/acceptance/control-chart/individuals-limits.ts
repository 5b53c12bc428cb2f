import { isIssue, unavailable, type Issue } from "../../measure/issue";

/** Mean range of two results as a multiple of their standard deviation: d2 for n = 2 (many tables). */
export const RANGE_OF_TWO = 1.128;

/** How many deviations the limits of a control chart lie from its mean. */
export const LIMIT_DEVIATIONS = 3;

/** Limits of a control chart. */
export interface ChartLimits {
  readonly lower: number;
  readonly mean: number;
  readonly upper: number;
}

/** Mean and short-term standard deviation of a series. */
export interface SeriesSpread {
  readonly mean: number;
  /** Mean moving range / 1.128. */
  readonly deviation: number;
}

/**
 * Mean of single results and their deviation from one to the next.
 *
 * @param values Results in the order in which they were made.
 * @returns Mean and deviation; the issue `chart-needs-two-values`.
 */
export function seriesSpread(values: readonly number[]): SeriesSpread | Issue {
  if (values.length < 2) return unavailable("chart-needs-two-values");
  const ranges = values.slice(1).map((value, i) => Math.abs(value - values[i]!));
  return { mean: meanOf(values), deviation: meanOf(ranges) / RANGE_OF_TWO };
}

/**
 * Limits of an individuals chart: the mean ± 3 deviations, the deviation from the moving range.
 *
 * @param values Results in the order in which they were made.
 * @returns The limits; the issue `chart-needs-two-values`.
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2.
 */
export function individualsLimits(values: readonly number[]): ChartLimits | Issue {
  const spread = seriesSpread(values);
  if (isIssue(spread)) return spread;
  const { mean, deviation } = spread;
  const reach = LIMIT_DEVIATIONS * deviation;
  return { lower: mean - reach, mean, upper: mean + reach };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
