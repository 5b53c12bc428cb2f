import type { Trend } from "../../acceptance/trend";
import type { ChartOrder } from "../../hosts/sheet-host";
import { say } from "../../messages/pane-catalogue";
import { pointName } from "./trend-groups";

/** The chart of a trend, for a spreadsheet that draws charts itself. */
export function chartOrder(trend: Trend, title: string): ChartOrder {
  const { points, limits } = trend;
  const line = (name: string, value: (point: (typeof points)[number]) => number | undefined) => ({
    name,
    values: points.map((point) => value(point) ?? null),
  });
  const lines = [
    line(say("trend-line-air"), ({ value }) => value),
    line(say("trend-line-mean"), () => limits?.mean),
    line(say("trend-line-lower"), () => limits?.lower),
    line(say("trend-line-upper"), () => limits?.upper),
    line(say("trend-line-low"), (point) => point.limits.low),
    line(say("trend-line-high"), (point) => point.limits.high),
  ];
  return {
    sheetName: say("trend-sheet-name"),
    title,
    names: points.map(pointName),
    lines: lines.filter(({ values }) => values.some((value) => value !== null)),
  };
}
