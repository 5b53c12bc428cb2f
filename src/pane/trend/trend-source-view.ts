import { say } from "../../messages/pane-catalogue";
import type { PaneCommands } from "../state/commands";
import { button, element } from "../kit/element";
import { limitInputs } from "../state/limit-inputs";
import type { PaneStore } from "../state/pane-state";

/** What the trend is of: the checked table, or a column, which has no limits beside it. */
export function trendSourceView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const column = button(say("trend-take-column"), () => void commands.takeTrendColumn());
  const table = button(say("trend-take-table"), () => store.set({ trendColumn: undefined }));
  const limits = element(
    "div",
    { class: "inputs" },
    ...limitInputs(store, commands).map(({ field }) => field.view),
  );
  store.watch(
    ({ trendColumn }) => trendColumn !== undefined,
    (ofColumn) => (limits.hidden = !ofColumn),
  );
  store.watch(
    ({ trendColumn, checked }) => trendColumn !== undefined && checked !== undefined,
    (both) => (table.hidden = !both),
  );
  return element("div", {}, element("div", { class: "actions" }, column, table), limits);
}
