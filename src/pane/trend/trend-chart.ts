import uPlot from "uplot";
import "uplot/dist/uPlot.min.css";
import type { Trend, TrendPoint } from "../../acceptance/trend";

const HEIGHT = 220;
const POINT_RADIUS = 3.5;

/** Colours of a chart, as CSS knows them. */
type Ink = (
  name: "line" | "grid" | "text" | "band" | "edge" | "limit" | "below" | "above",
) => string;

/**
 * Draws an individuals chart: the points in their order, mean and control limits as lines, the
 * specification as a band. A point outside it is a triangle that points the way, a signal has a ring.
 *
 * @param place Where to draw it; its width is taken.
 */
export function drawTrend(place: HTMLElement, { points, limits }: Trend): uPlot {
  const styles = getComputedStyle(place);
  const ink: Ink = (name) => styles.getPropertyValue(`--chart-${name}`).trim();
  const numbers = points.map((_, i) => i + 1);
  const values = points.map(({ value }) => value);
  const specified = points.flatMap((point) => [point.limits.low, point.limits.high]);
  const seen = [...values, ...Object.values(limits ?? {}), ...specified];
  const known = seen.filter((value) => value !== undefined);
  const lowest = known.reduce((least, value) => Math.min(least, value));
  const highest = known.reduce((most, value) => Math.max(most, value));
  const axis = { stroke: ink("text"), grid: { stroke: ink("grid"), width: 1 }, ticks: { size: 4 } };
  return new uPlot(
    {
      width: Math.max(240, place.clientWidth),
      height: HEIGHT,
      legend: { show: false },
      cursor: { show: false },
      scales: {
        x: { time: false, range: [0.5, Math.max(1.5, points.length + 0.5)] },
        y: { range: [lowest - 0.5, highest + 0.5] },
      },
      axes: [
        { ...axis, size: 28, incrs: [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 5000, 20000] },
        { ...axis, size: 36 },
      ],
      series: [{}, { stroke: ink("line"), width: 1.25, points: { show: false } }],
      hooks: {
        drawClear: [(plot) => drawBand(plot, points, ink)],
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

/** Each point has the band of its own specification, so that it may change along the chart. */
function drawBand(plot: uPlot, points: readonly TrendPoint[], ink: Ink): void {
  const { ctx, bbox } = plot;
  ctx.save();
  ctx.fillStyle = ink("band");
  ctx.strokeStyle = ink("edge");
  ctx.lineWidth = 1.5 * devicePixelRatio;
  ctx.setLineDash([2 * devicePixelRatio, 3 * devicePixelRatio]);
  points.forEach(({ limits: { low, high } }, i) => {
    if (low === undefined && high === undefined) return;
    // Whole pixels, so that neighbours meet without a seam.
    const left = Math.round(plot.valToPos(i + 0.5, "x", true));
    const right = Math.round(plot.valToPos(i + 1.5, "x", true));
    const top = high === undefined ? bbox.top : plot.valToPos(high, "y", true);
    const bottom = low === undefined ? bbox.top + bbox.height : plot.valToPos(low, "y", true);
    ctx.fillRect(left, top, right - left, bottom - top);
    if (high !== undefined) drawLine(ctx, left, right, top);
    if (low !== undefined) drawLine(ctx, left, right, bottom);
  });
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
    drawLine(ctx, bbox.left, bbox.left + bbox.width, y);
  }
  ctx.restore();
}

function drawLine(ctx: CanvasRenderingContext2D, from: number, to: number, y: number): void {
  ctx.beginPath();
  ctx.moveTo(from, y);
  ctx.lineTo(to, y);
  ctx.stroke();
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
