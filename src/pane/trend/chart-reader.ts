import type { Trend, TrendPoint } from "../../acceptance/trend";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { element } from "../kit/element";
import type { TrendChart } from "./trend-chart";
import { pointSentence } from "./point-sentence";
import { svg } from "./svg";

/** So many points are passed at once with Page Up and Page Down. */
const PAGE = 10;

/** Reads values off a chart. */
export interface ChartReader {
  /** The line that says the value, and is moved along the chart with the keyboard. */
  readonly line: HTMLElement;
  /** Reads off another chart from now on. */
  read(chart: TrendChart, trend: Trend, decimal: DecimalMark): void;
}

/**
 * Says the value of the result that the mouse or the arrow keys point at.
 *
 * @param open Called with a point that was clicked, or on which Enter was pressed.
 */
export function chartReader(open: (point: TrendPoint) => void): ChartReader {
  const line = element("div", {
    class: "chart-reading",
    role: "slider",
    tabindex: 0,
    "aria-label": say("trend-read-off"),
    "aria-valuemin": 1,
  });
  const hint = say("trend-read-off-hint");
  const pin = svg("path", { fill: "none", "stroke-width": 1.5, "pointer-events": "none" });
  let now: { chart: TrendChart; trend: Trend; decimal: DecimalMark } | undefined;
  let at = 0;

  function show(number: number): void {
    if (!now) return;
    const { chart, trend, decimal } = now;
    const { points } = trend;
    at = Math.max(1, Math.min(points.length, number));
    const point = points[at - 1]!;
    const sentence = pointSentence(point, at, points.length, decimal);
    const { x, y, top, bottom } = chart.layout;
    const [px, py] = [x(at), y(point.value)];
    pin.setAttribute(
      "d",
      `M${px} ${top}V${py - 6}M${px} ${py + 6}V${bottom}M${px - 6} ${py}a6 6 0 1 0 12 0a6 6 0 1 0 -12 0`,
    );
    pin.setAttribute("stroke", chart.ink.text);
    line.textContent = sentence;
    line.setAttribute("aria-valuenow", String(at));
    line.setAttribute("aria-valuetext", sentence);
  }

  line.addEventListener("keydown", (event) => {
    if (!now) return;
    const last = now.trend.points.length;
    const goal = {
      ArrowRight: at + 1,
      ArrowUp: at + 1,
      ArrowLeft: at - 1,
      ArrowDown: at - 1,
      PageUp: at + PAGE,
      PageDown: at - PAGE,
      Home: 1,
      End: last,
    }[event.key];
    if (goal !== undefined) show(goal);
    else if (event.key === "Enter" && at > 0) open(now.trend.points[at - 1]!);
    else return;
    event.preventDefault();
  });

  return {
    line,
    read(chart, trend, decimal) {
      now = { chart, trend, decimal };
      at = 0;
      pin.removeAttribute("d");
      chart.picture.append(pin);
      line.textContent = hint;
      line.setAttribute("aria-valuemax", String(trend.points.length));
      line.setAttribute("aria-valuenow", "1");
      line.setAttribute("aria-valuetext", hint);
      const { picture, layout } = chart;
      const numberAt = ({ clientX }: MouseEvent) =>
        layout.nearest(clientX - picture.getBoundingClientRect().left);
      picture.addEventListener("pointermove", (event) => show(numberAt(event)));
      picture.addEventListener("click", (event) => {
        show(numberAt(event));
        open(trend.points[at - 1]!);
      });
    },
  };
}
