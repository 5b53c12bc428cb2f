import { say, sentenceOf } from "../../messages/pane-catalogue";
import { button, element } from "../kit/element";
import type { PaneCommands } from "../state/commands";
import type { PaneState, PaneStore } from "../state/pane-state";
import { withChoices } from "../state/setup/choices";
import { columnLines, unreadLines, type ColumnLine } from "../state/setup/column-lines";
import { SETUP_SHEET } from "../../reading/setup/setup-sheet-name";
import { fieldChoice, unitChoice } from "./field-choice";

/** What every column or label is taken for, how surely and why, with the choice of something else. */
export function columnsView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const summary = element("summary");
  const list = element("ul", { class: "column-lines" });
  const hint = element("p", { class: "hint" });
  const keep = button(say("pane-keep-setup"), () => void commands.keepSetup());
  const notKept = element("span", { class: "hint" });
  const view = element(
    "details",
    { class: "columns" },
    summary,
    hint,
    list,
    element("div", { class: "actions" }, keep, notKept),
  );
  const show = () => {
    const state = store.get();
    const lines = linesOf(state);
    view.hidden = lines.length === 0;
    const read = lines.filter(({ taken }) => taken.state === "read").length;
    summary.textContent = say("pane-columns", { recognised: read, others: lines.length - read });
    hint.textContent = say(state.unread ? "pane-say-columns" : "pane-columns-hint");
    if (state.unread || lines.some(isOpenQuestion)) view.open = true;
    const focused = list.contains(document.activeElement)
      ? document.activeElement!.getAttribute("aria-label")
      : undefined;
    list.replaceChildren(...lines.map((line) => lineView(line, commands)));
    // Whoever chooses with the keyboard goes on where they were.
    if (focused)
      [...list.querySelectorAll("select")]
        .find((select) => select.getAttribute("aria-label") === focused)
        ?.focus();
  };
  for (const part of ["checked", "unread", "choices", "setup"] as const)
    store.watch((state) => state[part], show);
  store.watch(
    ({ choices }) => choices,
    ({ size }) => {
      keep.hidden = notKept.hidden = size === 0;
      notKept.textContent = say("pane-not-kept-yet", { count: size, sheet: SETUP_SHEET });
    },
  );
  store.watch(
    ({ work }) => work !== undefined,
    (busy) => keep.setAttribute("aria-disabled", String(busy)),
  );
  return view;
}

function linesOf({ checked, unread, setup, choices }: PaneState): readonly ColumnLine[] {
  const now = withChoices(setup?.setup, choices);
  if (unread) return unreadLines(unread, now);
  return checked ? columnLines(checked, now) : [];
}

/** Whether it has to be said what a column is before tests can be called valid. */
function isOpenQuestion({ taken }: ColumnLine): boolean {
  return (taken.state === "asked" || taken.state === "unknown") && taken.decides;
}

function lineView(line: ColumnLine, commands: PaneCommands): HTMLElement {
  const { place, header, name, taken } = line;
  const choose = (choice: Parameters<typeof commands.choose>[0]) => void commands.choose(choice);
  const unit = unitChoice(line, choose);
  const { say: id, values } = taken.because;
  const why = name === undefined ? say("pane-header-not-alone") : sentenceOf(id, values);
  return element(
    "li",
    { class: isOpenQuestion(line) ? "column-line open-question" : "column-line" },
    element(
      "div",
      { class: "column-head" },
      element("span", { class: "column-place" }, place),
      element("span", { class: "column-header" }, header),
      element("span", { class: "column-sure" }, say(sureness(line))),
    ),
    element("div", { class: "column-choices" }, fieldChoice(line, choose), ...(unit ? [unit] : [])),
    element("p", { class: "column-why" }, why),
  );
}

/** From here on a column is read as surely as its words can say it. */
const SURE = 90;

function sureness({ taken, kept }: ColumnLine) {
  if (kept) return "pane-sure-kept";
  if (taken.state === "read") return taken.score >= SURE ? "pane-sure" : "pane-fairly-sure";
  return taken.state === "asked" ? "pane-column-asked" : "pane-sure-not-read";
}
