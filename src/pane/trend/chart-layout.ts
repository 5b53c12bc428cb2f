import type { Trend } from "../../acceptance/trend";
import { linear, roundNumbers } from "./chart-scale";

/** Room around the plot for titles and numbers of the axes, px. */
const LEFT = 36;
const RIGHT = 10;
const TOP = 22;
const BOTTOM = 38;
/** What a number needs along its axis, px. */
const NUMBER_WIDTH = 46;
const NUMBER_HEIGHT = 26;
/** Room above and below all that is drawn, % air. */
const AIR_MARGIN = 0.5;

/** Where everything of a chart lies, px from its upper left corner. */
export interface ChartLayout {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Place of a point, counted from 1. */
  readonly x: (number: number) => number;
  /** Place of an air content. */
  readonly y: (air: number) => number;
  readonly xNumbers: readonly number[];
  readonly yNumbers: readonly number[];
  /** The point nearest to a place, counted from 1. */
  readonly nearest: (x: number) => number;
}

/** Lays the chart of a trend out in a rectangle. */
export function chartLayout({ points, limits }: Trend, width: number, height: number): ChartLayout {
  let [lowest, highest] = [Infinity, -Infinity];
  const show = (value: number | undefined) => {
    if (value === undefined) return;
    lowest = Math.min(lowest, value);
    highest = Math.max(highest, value);
  };
  for (const point of points) [point.value, point.limits.low, point.limits.high].forEach(show);
  Object.values(limits ?? {}).forEach(show);
  const air = [lowest - AIR_MARGIN, highest + AIR_MARGIN] as const;
  const numbers = [0.5, Math.max(1.5, points.length + 0.5)] as const;
  const [left, right, top, bottom] = [LEFT, width - RIGHT, TOP, height - BOTTOM];
  const inverse = linear([left, right], numbers);
  return {
    left,
    right,
    top,
    bottom,
    x: linear(numbers, [left, right]),
    y: linear(air, [bottom, top]),
    xNumbers: roundNumbers(1, points.length, Math.max(2, (right - left) / NUMBER_WIDTH), 1),
    yNumbers: roundNumbers(...air, Math.max(2, (bottom - top) / NUMBER_HEIGHT)),
    nearest: (x) => Math.max(1, Math.min(points.length, Math.round(inverse(x)))),
  };
}
