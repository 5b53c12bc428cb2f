import type { Bias } from "../../acceptance/bias/bias";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { choice } from "../kit/choice";
import { element } from "../kit/element";
import { shownChance, shownPercent } from "../kit/shown-number";
import type { PaneStore } from "../state/pane-state";
import { biasChart } from "./bias-chart";
import { biasReader } from "./bias-reader";
import { biasBy, namingColumns, type NamingColumn } from "./bias-source";
import { biasSentence, isTold, neededFor, shownDifference } from "./bias-words";
import { inkOf } from "./chart-ink";

/** More lines than these make no picture. */
const MOST_DRAWN = 20;

/** Who tests higher or lower than the others on the same mixes: picture, words and table. */
export function biasView(store: PaneStore): {
  readonly view: HTMLElement;
  onShown(shown: boolean): void;
} {
  const none = element("p", { class: "hint" });
  const by = choice<string>(say("bias-by"), () => show());
  const chart = element("div", { class: "chart", role: "img" });
  const reader = biasReader();
  const words = element("ul", { class: "trend-words" });
  const table = element("div");
  const cut = element("p", { class: "hint" });
  const body = element(
    "div",
    {},
    by.view,
    element("p", { class: "hint" }, say("bias-hint")),
    chart,
    reader.line,
    cut,
    words,
    table,
    element("p", { class: "hint" }, say("bias-basis")),
  );
  const view = element(
    "section",
    { "aria-labelledby": "fresh-bias-title" },
    element("h2", { id: "fresh-bias-title" }, say("bias-heading")),
    none,
    body,
  );
  let shown = false;
  let columns: readonly NamingColumn[] = [];

  function take(): void {
    const { checked } = store.get();
    view.hidden = checked === undefined;
    if (!shown || !checked) return;
    columns = namingColumns(checked);
    by.offer(columns.map(({ index, header }) => [String(index), header]));
    show();
  }

  function show(): void {
    const { checked } = store.get();
    if (!shown || !checked || !chart.isConnected) return;
    const column = columns.find(({ index }) => String(index) === by.value());
    const found = column && biasBy(checked, column);
    none.hidden = found !== undefined;
    none.textContent = say(column ? "bias-nobody" : "bias-none");
    for (const part of [chart, reader.line, words, table]) part.hidden = found === undefined;
    by.view.hidden = columns.length === 0;
    body.hidden = columns.length === 0;
    if (found) draw(found, checked.decimal);
  }

  function draw(found: readonly Bias[], decimal: DecimalMark): void {
    const lines = found.slice(0, MOST_DRAWN);
    const look = { width: Math.max(240, chart.clientWidth), ink: inkOf(chart), decimal };
    const drawn = biasChart(lines, look);
    chart.replaceChildren(drawn.picture);
    chart.setAttribute("aria-label", [say("bias-axis"), ...toldOf(lines, decimal)].join(". "));
    reader.read(drawn, lines, decimal);
    cut.textContent =
      found.length > lines.length
        ? say("bias-cut", { shown: lines.length, all: found.length })
        : "";
    words.replaceChildren(
      ...found.filter(isTold).map((one) => element("li", {}, biasSentence(one, decimal))),
    );
    table.replaceChildren(biasTable(found, decimal));
  }

  store.watch(({ checked }) => checked, take);
  for (const query of ["(prefers-color-scheme: dark)", "(forced-colors: active)"])
    matchMedia(query).addEventListener("change", show);
  let width = 0;
  new ResizeObserver(() => {
    if (chart.clientWidth === width) return;
    width = chart.clientWidth;
    if (width > 0) show();
  }).observe(chart);

  return {
    view,
    onShown(now) {
      shown = now;
      take();
    },
  };
}

function toldOf(lines: readonly Bias[], decimal: DecimalMark): string[] {
  return lines.flatMap(({ who, difference }) =>
    difference === undefined ? [] : `${who} ${shownDifference(difference, decimal)}`,
  );
}

function biasTable(lines: readonly Bias[], decimal: DecimalMark): HTMLElement {
  const heads = ["who", "tests", "difference", "chance", "needed"] as const;
  return element(
    "details",
    { open: true },
    element("summary", {}, say("bias-table")),
    element(
      "table",
      {},
      element(
        "thead",
        {},
        element(
          "tr",
          {},
          ...heads.map((head) => element("th", { scope: "col" }, say(`bias-table-${head}`))),
        ),
      ),
      element("tbody", {}, ...lines.map((line) => tableRow(line, decimal))),
    ),
  );
}

function tableRow(line: Bias, decimal: DecimalMark): HTMLElement {
  const { who, tests, difference, standardError, p } = line;
  const cells = [
    String(tests),
    [
      ...(difference === undefined ? [] : [shownDifference(difference, decimal)]),
      ...(standardError === undefined ? [] : [shownPercent(standardError, decimal)]),
    ].join(" ± "),
    p === undefined ? "" : shownChance(p),
    isTold(line) ? "" : String(neededFor(line) ?? ""),
  ];
  return element(
    "tr",
    {},
    element("th", { scope: "row" }, who),
    ...cells.map((cell) => element("td", { class: "number" }, cell)),
  );
}
