import type { Verdict } from "../../acceptance/limits";
import type { ChartInk } from "./chart-ink";
import { svg } from "./svg";

const POINT_RADIUS = 3.5;

/** What a point looks like: a disc, or a triangle that points out of the specification; a ring for a signal. */
export function mark(
  [x, y]: readonly [x: number, y: number],
  ink: ChartInk,
  verdict?: Verdict,
  signals = false,
): SVGElement[] {
  const r = POINT_RADIUS;
  const up = verdict === "above" ? -1 : 1;
  const point =
    verdict === "above" || verdict === "below"
      ? svg("path", {
          d: `M${x} ${y + up * r * 1.5}L${x - r * 1.4} ${y - up * r}L${x + r * 1.4} ${y - up * r}Z`,
          fill: ink[verdict],
        })
      : svg("circle", { cx: x, cy: y, r, fill: ink.line });
  const ring = { cx: x, cy: y, r: r * 2.4, fill: "none", stroke: ink.text, "stroke-width": 1.5 };
  return signals ? [point, svg("circle", ring)] : [point];
}
