import { atOnce } from "../../hosts/in-slices";
import { say } from "../../messages/pane-catalogue";
import { element } from "../kit/element";
import { builtVersion } from "../kit/version-line";
import { NOTHING_AROUND, type AroundChecked } from "../state/around-checked";
import type { CheckedArea } from "../state/checked-area";
import type { PaneCommands } from "../state/commands";
import type { PaneStore } from "../state/pane-state";
import { headingInputs } from "./heading-inputs";
import { headingOfSheet } from "./heading-of-sheet";
import { keepReportButtons } from "./keep-report";
import { printInsteadOfPage } from "./print-report";
import { reportContent, type ReportGiven } from "./report-content";
import { IN_THE_PANE, ON_PAPER, reportPaper, type ReportLengths } from "./report-paper";
import { testsInScope } from "./report-scope";
import { shownTrends, trendFigures, trendsOfReport } from "./report-trend";
import { scopeChoice } from "./scope-choice";
import "./report.css";

/** The page of the report: of which tests it is, its head, the ways to keep it, and how it will look. */
export function reportView(
  store: PaneStore,
  commands: PaneCommands,
): { readonly view: HTMLElement; onShown(shown: boolean): void } {
  let shown = false;
  let around: { readonly of: CheckedArea; readonly is: AroundChecked } | undefined;

  const given = (checked: CheckedArea): ReportGiven | undefined => {
    const scope = scopes.chosen(checked);
    const { heading: typed, review } = store.get();
    const version = builtVersion();
    return scope && { ...(around?.is ?? NOTHING_AROUND), scope, version, typed, review };
  };
  const show = () => {
    const { checked } = store.get();
    nothing.hidden = checked !== undefined;
    body.hidden = checked === undefined;
    if (!shown || !checked) return;
    const made = given(checked);
    noTest.hidden = made !== undefined;
    chosen.hidden = made === undefined;
    if (!made) return;
    const { tests } = testsInScope(checked.result, made.scope);
    head.offer(headingOfSheet(checked, tests, made.above));
    paper.replaceChildren(paperOf(checked, made, IN_THE_PANE));
  };
  /** The cells above the table do not change with every edit in it, so they are read when they are seen. */
  const look = async () => {
    const { checked } = store.get();
    if (checked) scopes.offer(checked);
    show();
    if (!checked) return;
    const [now, before] = [checked.read.area, around?.of.read.area];
    const known = before?.sheetId === now.sheetId && before.row === now.row;
    if (around?.of === checked || (known && !shown)) return;
    around = { of: checked, is: await commands.aroundChecked(checked) };
    show();
  };

  const nothing = element("p", { class: "hint" }, say("report-check-first"));
  const noTest = element("p", { class: "hint" }, say("report-select-test"));
  const paper = element("div");
  const scopes = scopeChoice(store, show);
  const head = headingInputs(store, commands);
  const chosen = element("div", {}, keepReportButtons(commands, given), head.view, paper);
  const body = element(
    "div",
    {},
    element("div", { class: "inputs report-scope" }, scopes.view),
    noTest,
    chosen,
  );
  const view = element("div", {}, nothing, body);

  store.watch(
    ({ checked }) => checked,
    () => void look(),
  );
  store.watch(({ heading }) => heading, show);
  store.watch(({ review }) => review, show);
  store.watch(
    ({ cursor, checked }) => checked && scopes.chosen(checked)?.kind === "test" && cursor,
    show,
  );
  printInsteadOfPage(view, () => {
    const { checked } = store.get();
    const made = checked && given(checked);
    if (!made) return say(checked ? "report-select-test" : "report-check-first");
    const { sheetName: sheet } = checked.read.area;
    return { paper: paperOf(checked, made, ON_PAPER), file: made.file, sheet };
  });
  return {
    view,
    onShown(now) {
      shown = now;
      if (shown) void look();
    },
  };
}

function paperOf(checked: CheckedArea, given: ReportGiven, lengths: ReportLengths): HTMLElement {
  const content = reportContent(checked, given);
  const found = trendsOfReport(checked, content.tests);
  const trend = trendFigures(atOnce(shownTrends(checked, found, true)));
  return reportPaper(content, trend, lengths);
}
