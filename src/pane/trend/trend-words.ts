import type { Trend } from "../../acceptance/trend";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { shownPercent } from "../kit/shown-number";

/** Control limits from fewer results than this are said to be uncertain (common practice, from memory). */
const ENOUGH = 20;

/** What the chart of a trend shows, in sentences. */
export function trendSentences(trend: Trend, decimal: DecimalMark): string[] {
  const { points, leftOut, limits, specification } = trend;
  const shown = (value: number) => shownPercent(value, decimal);
  const outside = points.filter(({ verdict }) => verdict && verdict !== "within").length;
  const compared = points.some(({ verdict }) => verdict !== undefined);
  const signals = points.filter((point) => point.signals.length > 0).length;
  return [
    say("trend-points", { points: points.length }),
    ...(leftOut.void + leftOut.incomplete > 0
      ? [say("trend-left-out", { voids: leftOut.void, incomplete: leftOut.incomplete })]
      : []),
    limits
      ? say("trend-limits", {
          mean: shown(limits.mean),
          lower: shown(limits.lower),
          upper: shown(limits.upper),
        })
      : say("chart-needs-two-values"),
    ...(limits && points.length < ENOUGH
      ? [say("trend-few", { points: points.length, enough: ENOUGH })]
      : []),
    ...(specification ? [specificationSentence(specification, shown)] : []),
    ...(compared && !specification ? [say("trend-specifications-differ")] : []),
    ...(compared ? [say("trend-outside", { outside })] : []),
    ...(limits ? [say(signals > 0 ? "trend-signals-count" : "trend-no-signals", { signals })] : []),
  ];
}

function specificationSentence(
  { low, high }: NonNullable<Trend["specification"]>,
  shown: (value: number) => string,
): string {
  if (low === undefined) return say("trend-specification-high", { high: shown(high!) });
  if (high === undefined) return say("trend-specification-low", { low: shown(low) });
  return say("trend-specification", { low: shown(low), high: shown(high) });
}
