import { trends, type Trend, type TrendGrouping, type TrendPoint } from "../../acceptance/trend";
import { say } from "../../messages/pane-catalogue";
import { choice } from "../kit/choice";
import type { PaneCommands } from "../state/commands";
import { element } from "../kit/element";
import { biasView } from "./bias-view";
import { chartReader } from "./chart-reader";
import { inkOf } from "./chart-ink";
import { keepTrendButtons } from "./keep-trend";
import type { PaneStore } from "../state/pane-state";
import { problemSentence } from "../kit/problem-sentence";
import { trendChart } from "./trend-chart";
import { groupName } from "./trend-groups";
import { signalsList, trendTable } from "./trend-lists";
import { trendSourceOf, type TrendSource } from "./trend-source";
import { trendSourceView } from "./trend-source-view";
import { trendSentences } from "./trend-words";

/** Height of the chart without its key, px. */
const HEIGHT = 260;

/** The trend of a checked table or of a column: chart, words, signals and table. */
export function trendView(
  store: PaneStore,
  commands: PaneCommands,
): { readonly view: HTMLElement; onShown(shown: boolean): void } {
  const nothing = element("p", { class: "hint" }, say("trend-check-first"));
  const problem = element("p", { class: "problem", "aria-live": "polite" });
  const groupings = choice<TrendGrouping>(say("trend-by"), () => part());
  const groups = choice<string>(say("trend-group"), () => show());
  const chart = element("div", { class: "chart", role: "img" });
  const reader = chartReader((point) => lead(point));
  const words = element("ul", { class: "trend-words" });
  const lists = element("div");
  const body = element("div", {}, element("div", { class: "inputs" }, groupings.view, groups.view));
  /** Leads to a point where it stands by now. */
  const lead = ({ record, value }: TrendPoint) =>
    void (source?.placeOf
      ? commands.show(source.placeOf(record), value)
      : commands.goTo({ record, field: null }));
  let shown = false;
  let source: TrendSource | undefined;
  let parted: readonly Trend[] = [];
  let taken = false;

  const current = () => parted[Number(groups.value())];
  const titleOf = (trend: Trend, { address }: TrendSource) =>
    say("trend-title", { group: groupName(trend), address });

  /** Takes the tests once the page is in sight, since many take their time. */
  function take(): void {
    taken = shown;
    if (!shown) return;
    source = undefined;
    problem.textContent = "";
    try {
      source = trendSourceOf(store.get());
    } catch (error) {
      problem.textContent = problemSentence(error);
    }
    const { checked, trendColumn } = store.get();
    nothing.hidden = checked !== undefined || trendColumn !== undefined;
    body.hidden = source === undefined;
    if (!source) return;
    groupings.offer(source.groupings.map((by) => [by, say(GROUPING_WORDS[by])]));
    groupings.view.hidden = source.groupings.length === 1;
    part();
  }

  function part(): void {
    if (!source) return;
    parted = trends(source.tests, groupings.value());
    groups.offer(parted.map((trend, i) => [String(i), groupName(trend)]));
    groups.view.hidden = groupings.value() === "all";
    show();
  }

  function show(): void {
    const trend = current();
    if (!trend || !source || !shown || !chart.isConnected) return;
    const { decimal, unreadable } = source;
    const sentences = [
      ...trendSentences(trend, decimal),
      ...(unreadable > 0 ? [say("trend-unreadable", { cells: unreadable })] : []),
    ];
    words.replaceChildren(...sentences.map((sentence) => element("li", {}, sentence)));
    chart.hidden = reader.line.hidden = trend.points.length === 0;
    if (trend.points.length > 0) {
      const look = { width: Math.max(240, chart.clientWidth), height: HEIGHT, ink: inkOf(chart) };
      const drawn = trendChart(trend, { ...look, decimal });
      chart.replaceChildren(drawn.picture);
      reader.read(drawn, trend, decimal);
    }
    chart.setAttribute("aria-label", [titleOf(trend, source), ...sentences].join(" "));
    lists.replaceChildren(signalsList(trend, lead), trendTable(trend, decimal));
  }

  const keep = keepTrendButtons(commands, () => {
    const trend = current();
    if (!trend?.points.length || !source) return undefined;
    return { trend, title: titleOf(trend, source), decimal: source.decimal };
  });

  const bias = biasView(store);
  body.append(chart, reader.line, words, keep, lists);
  for (const part of ["checked", "trendColumn", "low", "high"] as const) {
    store.watch((state) => state[part], take);
  }
  for (const query of ["(prefers-color-scheme: dark)", "(forced-colors: active)"])
    matchMedia(query).addEventListener("change", show);
  let width = 0;
  new ResizeObserver(() => {
    if (chart.clientWidth === width) return;
    width = chart.clientWidth;
    if (width > 0) show();
  }).observe(chart);

  return {
    view: element(
      "section",
      { "aria-labelledby": "fresh-trend-title" },
      element("h2", { id: "fresh-trend-title" }, say("trend-heading")),
      nothing,
      trendSourceView(store, commands),
      problem,
      body,
      bias.view,
    ),
    onShown(now) {
      shown = now;
      bias.onShown(now);
      if (shown && !taken) take();
      else show();
    },
  };
}

const GROUPING_WORDS = {
  all: "trend-by-all",
  mix: "trend-by-mix",
  day: "trend-by-day",
  "mix and day": "trend-by-mix-and-day",
} as const;
