import { trends, type Trend, type TrendGrouping } from "../acceptance/trend";
import { trendTestsOf } from "../fieldsheet/trend-tests";
import { say } from "../messages/catalogue";
import type { CheckedArea } from "./checked-area";
import { chartOrder } from "./chart-order";
import { chartPicture, saveFile } from "./chart-picture";
import { choice } from "./choice";
import type { PaneCommands } from "./commands";
import { button, element } from "./element";
import type { PaneStore } from "./pane-state";
import { signalsList, trendTable } from "./trend-lists";
import { drawTrend } from "./trend-chart";
import { groupingsFor, groupName } from "./trend-groups";
import { trendSentences } from "./trend-words";

/** The trend of a checked table: chart, words, signals and table. */
export function trendView(
  store: PaneStore,
  commands: PaneCommands,
): { readonly view: HTMLElement; onShown(shown: boolean): void } {
  const nothing = element("p", { class: "hint" }, say("trend-check-first"));
  const groupings = choice<TrendGrouping>(say("trend-by"), () => part());
  const groups = choice<string>(say("trend-group"), () => show());
  const chart = element("div", { class: "chart", role: "img" });
  const words = element("ul", { class: "trend-words" });
  const lists = element("div");
  const body = element("div", {}, element("div", { class: "inputs" }, groupings.view, groups.view));
  let shown = false;
  let parted: readonly Trend[] = [];
  let drawn: ReturnType<typeof drawTrend> | undefined;

  const current = () => parted[Number(groups.value())];
  const titleOf = (trend: Trend, checked: CheckedArea) =>
    say("trend-title", { group: groupName(trend), address: checked.read.address });

  function part(): void {
    const { checked } = store.get();
    if (!checked) return;
    parted = trends(trendTestsOf(checked.result), groupings.value());
    groups.offer(parted.map((trend, i) => [String(i), groupName(trend)]));
    groups.view.hidden = groupings.value() === "all";
    show();
  }

  function show(): void {
    const trend = current();
    const { checked } = store.get();
    drawn?.destroy();
    drawn = undefined;
    if (!trend || !checked || !shown || !chart.isConnected) return;
    const sentences = trendSentences(trend, checked.decimal);
    words.replaceChildren(...sentences.map((sentence) => element("li", {}, sentence)));
    chart.hidden = trend.points.length === 0;
    if (trend.points.length > 0) drawn = drawTrend(chart, trend);
    chart.setAttribute("aria-label", [titleOf(trend, checked), ...sentences].join(" "));
    lists.replaceChildren(signalsList(trend, commands), trendTable(trend, checked.decimal));
  }

  const savePicture = async () => {
    const trend = current();
    const { checked } = store.get();
    if (!drawn || !trend || !checked) return;
    const styles = getComputedStyle(chart);
    const colours = {
      ground: styles.getPropertyValue("--ground").trim(),
      text: styles.getPropertyValue("--chart-text").trim(),
    };
    const title = titleOf(trend, checked);
    saveFile(`${title}.png`, await chartPicture(drawn.ctx.canvas, title, colours));
  };
  const keep = commands.addChart
    ? button(say("trend-add-chart"), () => {
        const trend = current();
        const { checked } = store.get();
        if (trend && checked) void commands.addChart?.(chartOrder(trend, titleOf(trend, checked)));
      })
    : button(say("trend-save-picture"), () => void savePicture());

  body.append(chart, element("p", { class: "hint" }, say("trend-key")), words, keep, lists);
  store.watch(
    ({ checked }) => checked,
    (checked) => {
      nothing.hidden = checked !== undefined;
      body.hidden = checked === undefined;
      if (!checked) return;
      groupings.offer(groupingsFor(checked.result).map((by) => [by, say(GROUPING_WORDS[by])]));
      part();
    },
  );
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
      body,
    ),
    onShown(now) {
      shown = now;
      show();
    },
  };
}

const GROUPING_WORDS = {
  all: "trend-by-all",
  mix: "trend-by-mix",
  day: "trend-by-day",
  "mix and day": "trend-by-mix-and-day",
} as const;
