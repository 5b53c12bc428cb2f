import { cusum } from "../acceptance/control-chart/cusum";
import { ewmaChart } from "../acceptance/control-chart/ewma";
import {
  individualsLimits,
  type ChartLimits,
} from "../acceptance/control-chart/individuals-limits";
import { runRuleWords } from "../acceptance/control-chart/run-rule-words";
import { brokenRunRules } from "../acceptance/control-chart/run-rules";
import { at, isIssue, issue, type Issue } from "../measure/issue";
import { differenceAmongPercents, shareAmongPercents } from "../measure/percent-as-share";
import { number, setting } from "./runner/argument";
import { alongSeries, fromSeries } from "./runner/along-series";
import { fewNumbers, single } from "./runner/setting";

/**
 * Limits of an individuals chart: lower limit, mean and upper limit, side by side. The mean ± 3 mean moving ranges / 1.128; blanks are skipped.
 * @customfunction CHART.LIMITS CHART.LIMITS
 * @param values Results in the order in which they were made, one column or one row.
 * @returns Lower limit, mean, upper limit.
 * @example =FRESH.CHART.LIMITS({49.6;47.6;49.9;51.3;47.8;51.2;52.6;52.4;53.6;52.1}) gives 45.8159, 50.81, 55.8041 [NIST/SEMATECH e-Handbook, 6.3.2.2]
 */
export function chartLimits(values: any[][]): any[][] {
  return limitsOf(values);
}
const limitsOf = fromSeries("values", (values) => {
  const limits = shareAmongPercents(...values) ?? individualsLimits(values);
  return isIssue(limits) ? limits : [limits.lower, limits.mean, limits.upper];
});

/**
 * Exponentially weighted moving average of a series with its control limits beside it: smoothed value, lower limit, upper limit. Blanks are skipped but keep their place.
 * @customfunction CHART.EWMA CHART.EWMA
 * @param values Results in the order in which they were made, one column or one row.
 * @param [lambda] Weight of the newest result, above 0 and at most 1: 0.3 unless given.
 * @param [target] Where the smoothing starts and the limits are centred; the mean of the results unless given.
 * @param [deviation] Standard deviation of one result; mean moving range / 1.128 unless given.
 * @returns Three cells for each result.
 * @example =FRESH.CHART.EWMA({52;47;53}, 0.3, 50, 2.0539) gives 50.60, 47.41, 52.59; 49.52, 47.41, 52.59; 50.56, 47.41, 52.59 [NIST/SEMATECH e-Handbook, 6.3.2.4]
 */
export function chartEwma(
  values: any[][],
  lambda?: any[][],
  target?: any[][],
  deviation?: any[][],
): any[][] {
  return ewmaOf(values, lambda, target, deviation);
}
const ewmaOf = alongSeries(
  "values",
  [
    single(setting(number("lambda"))),
    single(setting(number("target"))),
    single(setting(number("deviation"))),
  ],
  3,
  (values, lambda, target, deviation) => {
    const wrong =
      shareAmongPercents(...values, target) ??
      at("deviation", differenceAmongPercents(deviation, ...values));
    if (wrong) return wrong;
    const chart = ewmaChart(values, { lambda, target, deviation });
    if (isIssue(chart)) return chart;
    const { smoothed, lower, upper } = chart;
    return smoothed.map((value) => [value, lower, upper]);
  },
);

/**
 * Cumulative sums of a series: high sum, low sum and the signal, "high" or "low", where a sum lies beyond the decision value. Blanks are skipped but keep their place.
 * @customfunction CHART.CUSUM CHART.CUSUM
 * @param values Results in the order in which they were made, one column or one row.
 * @param target Where the results should lie.
 * @param k Allowance, in the unit of the results: half the shift that matters.
 * @param h Decision value, in the unit of the results.
 * @returns Three cells for each result.
 * @example =FRESH.CHART.CUSUM({6.5;6.75;7}, 6, 0.25, 1) gives 0.25, 0, ""; 0.75, 0, ""; 1.50, 0, "high" [each high sum grows by the result − 6 − 0.25]
 */
export function chartCusum(values: any[][], target: any[][], k: any[][], h: any[][]): any[][] {
  return cusumOf(values, target, k, h);
}
const cusumOf = alongSeries(
  "values",
  [single(number("target")), single(number("k")), single(number("h"))],
  3,
  (values, target, k, h) => {
    const wrong =
      shareAmongPercents(...values, target) ?? at("k", differenceAmongPercents(k, ...values));
    if (wrong) return wrong;
    const points = cusum(values, target, k, h);
    if (isIssue(points)) return points;
    return points.map(({ high, low, signal }) => [high, low, signal ?? ""]);
  },
);

/**
 * The run rules that each result of an individuals chart breaks, in words; blank if none. Blanks are skipped but keep their place.
 * @customfunction CHART.SIGNALS CHART.SIGNALS
 * @param values Results in the order in which they were made, one column or one row.
 * @param [limits] Lower limit, mean and upper limit, three cells as CHART.LIMITS gives them; worked out from the results unless given.
 * @returns One cell for each result.
 * @example =FRESH.CHART.SIGNALS({6;7.75;6.25}, {4.5,6,7.5}) gives ""; "Beyond a control limit"; "" [7.75 lies above 7.5]
 */
export function chartSignals(values: any[][], limits?: any[][]): any[][] {
  return signalsOf(values, limits);
}
const signalsOf = alongSeries("values", [fewNumbers("limits")], 1, (values, given) => {
  const limits = given.length === 0 ? individualsLimits(values) : givenLimits(given);
  if (isIssue(limits)) return limits;
  const wrong = shareAmongPercents(...values, ...given);
  if (wrong) return wrong;
  return brokenRunRules(values, limits).map((rules) => [runRuleWords(rules)]);
});

function givenLimits(numbers: readonly number[]): ChartLimits | Issue {
  const [lower, mean, upper] = numbers;
  const whole = numbers.length === 3 && lower! <= mean! && mean! <= upper!;
  if (!whole) return at("limits", issue("chart-limits-needed"));
  return { lower: lower!, mean: mean!, upper: upper! };
}
