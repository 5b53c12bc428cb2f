import uPlot from "uplot";
import "uplot/dist/uPlot.min.css";
import type { Trend, TrendPoint } from "../acceptance/trend";

const HEIGHT = 220;
const POINT_RADIUS = 3.5;

/** Colours of a chart, as CSS knows them. */
type Ink = (name: "line" | "grid" | "text" | "band" | "limit" | "below" | "above") => string;

/**
 * Draws an individuals chart: the points in their order, mean and control limits as lines, the
 * specification as a band. A point outside it is a triangle that points the way, a signal has a ring.
 *
 * @param place Where to draw it; its width is taken.
 */
export function drawTrend(place: HTMLElement, { points, limits, specification }: Trend): uPlot {
  const styles = getComputedStyle(place);
  const ink: Ink = (name) => styles.getPropertyValue(`--chart-${name}`).trim();
  const numbers = points.map((_, i) => i + 1);
  const values = points.map(({ value }) => value);
  const seen = [...values, ...Object.values(limits ?? {}), ...Object.values(specification ?? {})];
  const lines = seen.filter((value): value is number => value !== undefined);
  const axis = { stroke: ink("text"), grid: { stroke: ink("grid"), width: 1 }, ticks: { size: 4 } };
  return new uPlot(
    {
      width: Math.max(240, place.clientWidth),
      height: HEIGHT,
      legend: { show: false },
      cursor: { show: false },
      scales: {
        x: { time: false, range: [0.5, Math.max(1.5, points.length + 0.5)] },
        y: { range: [Math.min(...lines) - 0.5, Math.max(...lines) + 0.5] },
      },
      axes: [
        { ...axis, size: 28, incrs: [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 5000, 20000] },
        { ...axis, size: 36 },
      ],
      series: [{}, { stroke: ink("line"), width: 1.25, points: { show: false } }],
      hooks: {
        drawClear: [(plot) => drawBand(plot, specification, ink)],
        draw: [
          (plot) => drawLimits(plot, limits, ink),
          (plot) => points.forEach((point, i) => drawPoint(plot, point, i + 1, ink)),
        ],
      },
    },
    [numbers, values],
    place,
  );
}

function drawBand(plot: uPlot, specification: Trend["specification"], ink: Ink): void {
  if (!specification) return;
  const { ctx, bbox } = plot;
  const edge = (value: number | undefined, open: number) =>
    value === undefined ? open : plot.valToPos(value, "y", true);
  const top = edge(specification.high, bbox.top);
  const bottom = edge(specification.low, bbox.top + bbox.height);
  ctx.save();
  ctx.fillStyle = ink("band");
  ctx.fillRect(bbox.left, top, bbox.width, bottom - top);
  ctx.restore();
}

function drawLimits(plot: uPlot, limits: Trend["limits"], ink: Ink): void {
  if (!limits) return;
  const { ctx, bbox } = plot;
  ctx.save();
  ctx.strokeStyle = ink("limit");
  ctx.lineWidth = devicePixelRatio;
  for (const [name, value] of Object.entries(limits)) {
    const y = plot.valToPos(value, "y", true);
    ctx.setLineDash(name === "mean" ? [] : [6 * devicePixelRatio, 4 * devicePixelRatio]);
    ctx.beginPath();
    ctx.moveTo(bbox.left, y);
    ctx.lineTo(bbox.left + bbox.width, y);
    ctx.stroke();
  }
  ctx.restore();
}

function drawPoint(plot: uPlot, point: TrendPoint, number: number, ink: Ink): void {
  const { ctx } = plot;
  const { verdict, signals } = point;
  const x = plot.valToPos(number, "x", true);
  const y = plot.valToPos(point.value, "y", true);
  const radius = POINT_RADIUS * devicePixelRatio;
  ctx.save();
  ctx.fillStyle = ink(verdict === "below" || verdict === "above" ? verdict : "line");
  ctx.beginPath();
  if (verdict === "below" || verdict === "above") {
    const up = verdict === "above" ? -1 : 1;
    ctx.moveTo(x, y + up * radius * 1.5);
    ctx.lineTo(x - radius * 1.4, y - up * radius);
    ctx.lineTo(x + radius * 1.4, y - up * radius);
  } else ctx.arc(x, y, radius, 0, 2 * Math.PI);
  ctx.fill();
  if (signals.length > 0) {
    ctx.strokeStyle = ink("text");
    ctx.lineWidth = 1.5 * devicePixelRatio;
    ctx.beginPath();
    ctx.arc(x, y, radius * 2.4, 0, 2 * Math.PI);
    ctx.stroke();
  }
  ctx.restore();
}
