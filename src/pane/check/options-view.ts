import { say } from "../../messages/pane-catalogue";
import { button, element } from "../kit/element";
import type { PaneCommands } from "../state/commands";
import type { PaneStore } from "../state/pane-state";
import { settingBox } from "../state/setting-box";

/** What else can be done in the sheet: notes beside the marks, checking live, a results sheet. */
export function optionsView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const write = button(say("pane-write-results"), () => void commands.writeResultsSheet());
  store.watch(
    ({ work }) => work !== undefined,
    (busy) => write.setAttribute("aria-disabled", String(busy)),
  );
  store.watch(
    ({ checked }) => checked === undefined,
    (nothing) => (write.hidden = nothing),
  );
  return element(
    "section",
    { "aria-labelledby": "fresh-sheet-title" },
    element("h2", { id: "fresh-sheet-title" }, say("pane-in-the-sheet")),
    settingBox(store, commands, "live", say("pane-live")),
    settingBox(store, commands, "withNotes", say("pane-with-notes")),
    element("div", { class: "actions" }, write),
  );
}
