import { columnsView } from "./columns-view";
import type { PaneCommands } from "../state/commands";
import { countsView } from "./counts-view";
import { element } from "../kit/element";
import { findingsView } from "./findings-view";
import { limitsView } from "./limits-view";
import type { PaneStore } from "../state/pane-state";
import { scopeView } from "./scope-view";
import { sheetActionsView } from "./sheet-actions-view";

/** The page on which a table is checked: what to check, what was found, what to do in the sheet. */
export function checkPage(store: PaneStore, commands: PaneCommands): HTMLElement {
  const found = element(
    "div",
    {},
    countsView(store),
    findingsView(store, commands),
    columnsView(store),
    limitsView(store, commands),
  );
  store.watch(
    ({ checked }) => checked === undefined,
    (nothing) => (found.hidden = nothing),
  );
  return element("div", {}, scopeView(store, commands), found, sheetActionsView(store, commands));
}
