import type { Bias } from "../../acceptance/bias/bias";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { typedText } from "../kit/shown-number";
import { isTold } from "./bias-words";
import type { ChartInk } from "./chart-ink";
import { linear, roundNumbers } from "./chart-scale";
import { svg } from "./svg";

/** Of one name, px; and the room for the numbers and title of the axis. */
const ROW = 26;
const BOTTOM = 38;
const RIGHT = 12;
const TOP = 6;
/** Room for the names, and what a letter of them needs. */
const MOST_FOR_NAMES = 120;
const LETTER = 6.5;
const NUMBER_WIDTH = 46;
const DISC = 4;

/** A picture of differences. */
export interface BiasChart {
  readonly picture: SVGSVGElement;
  /** The line at a height of the picture, from 0. */
  readonly nearest: (y: number) => number;
  /** The middle of a line. */
  readonly middle: (line: number) => number;
}

/** Draws a line for each name: its difference as a disc, its standard error either way, a ring where it is told from chance. */
export function biasChart(
  lines: readonly Bias[],
  {
    width,
    ink,
    decimal,
  }: { readonly width: number; readonly ink: ChartInk; readonly decimal: DecimalMark },
): BiasChart {
  const names = Math.min(
    MOST_FOR_NAMES,
    12 + LETTER * Math.max(...lines.map(({ who }) => who.length)),
  );
  const bottom = TOP + ROW * lines.length;
  const reach = lines.flatMap(({ difference = 0, standardError = 0 }) => [
    Math.abs(difference) + standardError,
  ]);
  // The same to both sides, so that nobody looks worse for the side.
  const most = Math.max(0.25, ...reach) * 1.1;
  const x = linear([-most, most], [names, width - RIGHT]);
  const middle = (line: number) => TOP + ROW * (line + 0.5);
  const height = bottom + BOTTOM;
  const numbers = roundNumbers(-most, most, Math.max(3, (width - names) / NUMBER_WIDTH));
  const picture = svg(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      ...{ width, height, viewBox: `0 0 ${width} ${height}`, fill: ink.text, "font-size": 11 },
      "font-family": "system-ui, 'Segoe UI', sans-serif",
    },
    ...numbers.flatMap((number) => [
      svg("line", {
        ...{ x1: x(number), x2: x(number), y1: TOP, y2: bottom },
        stroke: number === 0 ? ink.limit : ink.grid,
      }),
      svg(
        "text",
        { x: x(number), y: bottom + 15, "text-anchor": "middle" },
        `${number < 0 ? "−" : number > 0 ? "+" : ""}${typedText(Math.abs(number), decimal)}`,
      ),
    ]),
    svg(
      "text",
      { x: (names + width) / 2, y: bottom + 31, "text-anchor": "middle", "font-weight": 600 },
      say("bias-axis"),
    ),
    ...lines.flatMap((line, i) => drawn(line, { y: middle(i), x, names, ink })),
  );
  return {
    picture,
    middle,
    nearest: (y) => Math.max(0, Math.min(lines.length - 1, Math.floor((y - TOP) / ROW))),
  };
}

interface LinePlace {
  readonly y: number;
  readonly x: (difference: number) => number;
  readonly names: number;
  readonly ink: ChartInk;
}

function drawn(line: Bias, { y, x, names, ink }: LinePlace): SVGElement[] {
  const { who, difference, standardError } = line;
  const letters = Math.floor((names - 8) / LETTER);
  const shown = who.length > letters ? `${who.slice(0, letters - 1)}…` : who;
  const name = svg("text", { x: names - 8, y: y + 4, "text-anchor": "end" }, shown);
  if (difference === undefined) return [name];
  const at = x(difference);
  const parts: SVGElement[] = [name];
  if (standardError) {
    const [from, to] = [x(difference - standardError), x(difference + standardError)];
    const d = `M${from} ${y}H${to}M${from} ${y - 5}V${y + 5}M${to} ${y - 5}V${y + 5}`;
    parts.push(svg("path", { d, stroke: ink.line, "stroke-width": 1.5, fill: "none" }));
  }
  parts.push(svg("circle", { cx: at, cy: y, r: DISC, fill: ink.line }));
  if (isTold(line))
    parts.push(
      svg("circle", {
        cx: at,
        cy: y,
        r: DISC * 2.1,
        fill: "none",
        stroke: ink.text,
        "stroke-width": 1.5,
      }),
    );
  return parts;
}
