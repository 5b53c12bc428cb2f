import { say } from "../../messages/pane-catalogue";
import { element } from "../kit/element";
import type { PaneCommands } from "../state/commands";
import type { PaneStore } from "../state/pane-state";
import { areaView, otherSheetsView } from "./area-view";
import { columnsView } from "./columns-view";
import { testCounts } from "./counts-view";
import { findingsView } from "./findings-view";
import { mixesView } from "./mixes-view";
import { limitsView } from "./limits-view";
import { notCheckedView } from "../state/not-checked-view";
import { reviewView } from "./review-view";
import { optionsView } from "./options-view";

/** The page on which tests are checked: what was found first, what can be chosen behind it. */
export function checkPage(store: PaneStore, commands: PaneCommands): HTMLElement {
  const begin = element("p", { class: "hint" }, say("pane-begin"));
  const missing = element("div");
  const found = element(
    "div",
    {},
    testCounts(store),
    missing,
    findingsView(store, commands),
    reviewView(store, commands),
    limitsView(store, commands),
    mixesView(store, commands),
  );
  store.watch(
    ({ checked }) => checked,
    (checked) => {
      begin.hidden = checked !== undefined;
      found.hidden = checked === undefined;
      if (checked) missing.replaceChildren(notCheckedView(checked.result));
    },
  );
  return element(
    "div",
    {},
    begin,
    otherSheetsView(store, commands),
    found,
    columnsView(store, commands),
    areaView(store, commands),
    optionsView(store, commands),
  );
}
