import { runRuleWords } from "../../acceptance/control-chart/run-rule-words";
import type { Trend, TrendPoint } from "../../acceptance/trend";
import type { DecimalMark } from "../../measure/number-from-cell";
import { inLine, say } from "../../messages/pane-catalogue";
import { badgeWord } from "../kit/badge";
import { button, element } from "../kit/element";
import { shownPercent } from "../kit/shown-number";
import { pointName } from "./trend-groups";

/** Longer lists than these help nobody on a page. */
const MOST_SIGNALS = 100;
const MOST_ROWS = 500;

/** The points that signal, with the run rules that they break; each leads to its row. */
export function signalsList({ points }: Trend, goTo: (point: TrendPoint) => void): HTMLElement {
  const signalling = points.filter(({ signals }) => signals.length > 0);
  if (signalling.length === 0) return element("div");
  const left = signalling.length - MOST_SIGNALS;
  return element(
    "section",
    { "aria-labelledby": "fresh-signals-title" },
    element("h3", { id: "fresh-signals-title" }, say("trend-signals")),
    element(
      "ul",
      { class: "signals" },
      ...signalling.slice(0, MOST_SIGNALS).map((point) =>
        element(
          "li",
          {},
          button(pointName(point), () => goTo(point), "link-button"),
          `: ${runRuleWords(point.signals, (rule) => inLine(rule))}`,
        ),
      ),
    ),
    ...(left > 0 ? [element("p", { class: "hint" }, say("trend-signals-cut", { left }))] : []),
  );
}

/** The numbers of the chart, in a table that is made when it is opened. */
export function trendTable({ points }: Trend, decimal: DecimalMark): HTMLElement {
  const details = element("details", {}, element("summary", {}, say("trend-table")));
  const heads = [
    "trend-table-test",
    "trend-table-air",
    "trend-table-spec",
    "trend-table-signals",
  ] as const;
  details.addEventListener(
    "toggle",
    () =>
      details.append(
        element(
          "table",
          {},
          element(
            "thead",
            {},
            element("tr", {}, ...heads.map((id) => element("th", { scope: "col" }, say(id)))),
          ),
          element(
            "tbody",
            {},
            ...points.slice(0, MOST_ROWS).map((point) => pointRow(point, decimal)),
          ),
        ),
        ...(points.length > MOST_ROWS ? [element("p", { class: "hint" }, cut(points.length))] : []),
      ),
    { once: true },
  );
  return details;
}

function cut(all: number): string {
  return say("trend-table-cut", { shown: MOST_ROWS, all });
}

function pointRow(point: TrendPoint, decimal: DecimalMark): HTMLElement {
  const { value, verdict } = point;
  return element(
    "tr",
    {},
    element("th", { scope: "row" }, pointName(point)),
    element("td", { class: "number" }, shownPercent(value, decimal)),
    element("td", {}, verdict ? badgeWord(verdict) : ""),
    element(
      "td",
      {},
      runRuleWords(point.signals, (rule) => inLine(rule)),
    ),
  );
}
