import type { Trend } from "../../acceptance/trend";
import { say } from "../../messages/pane-catalogue";
import type { ChartColumn } from "./chart-columns";
import type { ChartInk } from "./chart-ink";
import { mark } from "./chart-mark";
import { svg } from "./svg";

const LINE_HEIGHT = 18;
/** Width of a sign in the key, and what a letter needs at most, px. */
const SIGN_WIDTH = 24;
const LETTER_WIDTH = 6.2;
const GAP = 14;

/** The key of a chart: what each sign in it stands for, as many lines as its width asks for. */
export function chartKey(
  trend: Trend,
  columns: readonly ChartColumn[],
  width: number,
  top: number,
  ink: ChartInk,
): { readonly drawing: SVGGElement; readonly bottom: number } {
  const drawing = svg("g");
  let [x, y] = [4, top + 12];
  for (const { sign, words } of entries(trend, columns, ink)) {
    const needed = SIGN_WIDTH + words.length * LETTER_WIDTH;
    if (x > 4 && x + needed > width) [x, y] = [4, y + LINE_HEIGHT];
    drawing.append(
      svg("g", { transform: `translate(${x} ${y})` }, ...sign),
      svg("text", { x: x + SIGN_WIDTH, y: y + 4 }, words),
    );
    x += needed + GAP;
  }
  return { drawing, bottom: y + LINE_HEIGHT };
}

function entries(
  { points, limits }: Trend,
  columns: readonly ChartColumn[],
  ink: ChartInk,
): { readonly sign: readonly SVGElement[]; readonly words: string }[] {
  const any = (test: (point: (typeof points)[number]) => boolean) => points.some(test);
  const line = (more: Record<string, string | number>) => [
    svg("path", { d: "M0 0H18", fill: "none", stroke: ink.line, ...more }),
  ];
  const middle = [9, 0] as const;
  const [first] = columns;
  const kinds = [
    !first && { sign: mark(middle, ink), words: say("trend-key-result") },
    first && {
      sign: line({ "stroke-width": 10, "stroke-opacity": 0.35 }),
      words: say("trend-key-columns", { count: first.to - first.from + 1 }),
    },
    limits && { sign: line({ stroke: ink.limit }), words: say("trend-key-mean") },
    limits && {
      sign: line({ stroke: ink.limit, "stroke-dasharray": "6 4" }),
      words: say("trend-key-limits"),
    },
    any(({ verdict }) => verdict !== undefined) && {
      sign: [
        svg("rect", { x: 0, y: -5, width: 18, height: 10, fill: ink.band }),
        svg("path", { d: "M0 -5H18M0 5H18", stroke: ink.edge, "stroke-dasharray": "2 3" }),
      ],
      words: say("trend-key-specification"),
    },
    any(({ verdict }) => verdict === "above") && {
      sign: mark(middle, ink, "above"),
      words: say("trend-key-above"),
    },
    any(({ verdict }) => verdict === "below") && {
      sign: mark(middle, ink, "below"),
      words: say("trend-key-below"),
    },
    !first &&
      any(({ signals }) => signals.length > 0) && {
        sign: mark(middle, ink, undefined, true),
        words: say("trend-key-signal"),
      },
  ];
  return kinds.filter((kind) => kind !== undefined && kind !== false);
}
