import type { Trend, TrendPoint } from "../../acceptance/trend";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { typedText } from "../kit/shown-number";
import { chartColumns, type ChartColumn } from "./chart-columns";
import type { ChartInk } from "./chart-ink";
import { chartKey } from "./chart-key";
import { chartLayout, type ChartLayout } from "./chart-layout";
import { mark } from "./chart-mark";
import { svg, wayThrough } from "./svg";

/** With less room than this a point is no point any more, px. */
const ROOM_OF_POINT = 3;

/** How a chart is to look. */
export interface ChartLook {
  readonly width: number;
  /** Height without the key, px. */
  readonly height: number;
  readonly ink: ChartInk;
  readonly decimal: DecimalMark;
}

/** A trend as it is drawn. */
export interface TrendChart {
  readonly picture: SVGSVGElement;
  readonly layout: ChartLayout;
  readonly ink: ChartInk;
}

/**
 * Draws an individuals chart: the points in their order, mean and control limits as lines, the
 * specification as a band, and the key to all of it. A point outside the specification is a triangle
 * that points the way, a signal has a ring. More points than there is room for become one band from
 * the lowest to the highest of neighbours.
 */
export function trendChart(trend: Trend, { width, height, ink, decimal }: ChartLook): TrendChart {
  const { points, limits } = trend;
  const layout = chartLayout(trend, width, height);
  const room = layout.right - layout.left;
  const dense = points.length > room / ROOM_OF_POINT;
  const columns = dense ? chartColumns(points, Math.floor(room / ROOM_OF_POINT)) : [];
  const key = chartKey(trend, columns, width, height, ink);
  const picture = svg(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      width,
      height: key.bottom,
      viewBox: `0 0 ${width} ${key.bottom}`,
      "font-family": "system-ui, 'Segoe UI', sans-serif",
      "font-size": 11,
      fill: ink.text,
    },
    specificationBand(points, layout, ink),
    axes(layout, ink, decimal),
    ...(limits ? [controlLimits(limits, layout, ink)] : []),
    dense ? columnsDrawn(columns, layout, ink) : pointsDrawn(points, layout, ink),
    key.drawing,
  );
  return { picture, layout, ink };
}

function axes(layout: ChartLayout, ink: ChartInk, decimal: DecimalMark): SVGGElement {
  const { left, right, top, bottom, x, y } = layout;
  const line = { stroke: ink.grid, "stroke-width": 1 };
  return svg(
    "g",
    {},
    ...layout.yNumbers.flatMap((air) => [
      svg("line", { x1: left, x2: right, y1: y(air), y2: y(air), ...line }),
      svg("text", { x: left - 5, y: y(air) + 4, "text-anchor": "end" }, typedText(air, decimal)),
    ]),
    ...layout.xNumbers.flatMap((number) => [
      svg("line", { x1: x(number), x2: x(number), y1: bottom, y2: bottom + 4, stroke: ink.limit }),
      svg("text", { x: x(number), y: bottom + 15, "text-anchor": "middle" }, String(number)),
    ]),
    svg("line", { x1: left, x2: right, y1: bottom, y2: bottom, stroke: ink.limit }),
    svg("text", { x: 2, y: top - 9, "font-weight": 600 }, say("trend-axis-air")),
    svg(
      "text",
      { x: (left + right) / 2, y: bottom + 31, "text-anchor": "middle", "font-weight": 600 },
      say("trend-axis-tests"),
    ),
  );
}

/** Each point has the band of its own specification, so that it may change along the chart. */
function specificationBand(
  points: readonly TrendPoint[],
  { x, y, top, bottom }: ChartLayout,
  ink: ChartInk,
): SVGGElement {
  const band = svg("g", { stroke: ink.edge, "stroke-width": 1.5, "stroke-dasharray": "2 3" });
  let from = 0;
  points.forEach(({ limits: { low, high } }, i) => {
    const next = points[i + 1]?.limits;
    if (next && next.low === low && next.high === high) return;
    const [left, right] = [x(from + 0.5), x(i + 1.5)];
    from = i + 1;
    if (low === undefined && high === undefined) return;
    const [upper, lower] = [
      high === undefined ? top : y(high),
      low === undefined ? bottom : y(low),
    ];
    const size = { width: right - left, height: Math.max(0, lower - upper) };
    band.append(svg("rect", { x: left, y: upper, ...size, fill: ink.band, stroke: "none" }));
    if (high !== undefined) band.append(svg("path", { d: `M${left} ${upper}H${right}` }));
    if (low !== undefined) band.append(svg("path", { d: `M${left} ${lower}H${right}` }));
  });
  return band;
}

function controlLimits(
  limits: NonNullable<Trend["limits"]>,
  { left, right, y }: ChartLayout,
  ink: ChartInk,
): SVGGElement {
  return svg(
    "g",
    { stroke: ink.limit },
    ...Object.entries(limits).map(([name, value]) =>
      svg("path", {
        d: `M${left} ${y(value)}H${right}`,
        "stroke-dasharray": name === "mean" ? undefined : "6 4",
      }),
    ),
  );
}

function pointsDrawn(
  points: readonly TrendPoint[],
  { x, y }: ChartLayout,
  ink: ChartInk,
): SVGGElement {
  const places = points.map(({ value }, i) => [x(i + 1), y(value)] as const);
  const drawn = svg(
    "g",
    {},
    svg("path", { d: wayThrough(places), fill: "none", stroke: ink.line }),
  );
  points.forEach(({ verdict, signals }, i) =>
    drawn.append(...mark(places[i]!, ink, verdict, signals.length > 0)),
  );
  return drawn;
}

/** The band from the lowest to the highest of each column, the way of the means, and what lies outside. */
function columnsDrawn(
  columns: readonly ChartColumn[],
  { x, y }: ChartLayout,
  ink: ChartInk,
): SVGGElement {
  const middle = ({ from, to }: ChartColumn) => x((from + to) / 2);
  const upper = columns.map((column) => [middle(column), y(column.highest)] as const);
  const lower = columns.map((column) => [middle(column), y(column.lowest)] as const);
  const means = columns.map((column) => [middle(column), y(column.mean)] as const);
  return svg(
    "g",
    {},
    svg("path", {
      d: `${wayThrough([...upper, ...lower.reverse()])}Z`,
      fill: ink.line,
      "fill-opacity": 0.35,
      stroke: ink.line,
      "stroke-width": 0.5,
    }),
    svg("path", { d: wayThrough(means), fill: "none", stroke: ink.line, "stroke-width": 1.5 }),
    ...columns.flatMap((column) => [
      ...(column.above ? mark([middle(column), y(column.highest)], ink, "above") : []),
      ...(column.below ? mark([middle(column), y(column.lowest)], ink, "below") : []),
    ]),
  );
}
