import { say } from "../../messages/pane-catalogue";
import type { PaneCommands } from "../state/commands";
import { button, element } from "../kit/element";
import type { PaneStore } from "../state/pane-state";

/** What can be done in the sheet: mark, take the marks off, write a results sheet, check live. */
export function sheetActionsView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const mark = button(say("pane-mark"), () => void commands.mark());
  const write = button(say("pane-write-results"), () => void commands.writeResultsSheet());
  const unmark = button(say("pane-unmark"), () => void commands.unmark());
  store.watch(
    ({ work }) => work !== undefined,
    (busy) =>
      [mark, write, unmark].forEach((each) => each.setAttribute("aria-disabled", String(busy))),
  );
  const needCheck = element(
    "div",
    { class: "actions" },
    mark,
    setting(store, commands, "withNotes", say("pane-with-notes")),
    write,
  );
  store.watch(
    ({ checked }) => checked === undefined,
    (nothing) => (needCheck.hidden = nothing),
  );
  return element(
    "section",
    { "aria-labelledby": "fresh-sheet-title" },
    element("h2", { id: "fresh-sheet-title" }, say("pane-in-the-sheet")),
    needCheck,
    element(
      "div",
      { class: "actions" },
      unmark,
      setting(store, commands, "live", say("pane-live"), "switch"),
    ),
  );
}

function setting(
  store: PaneStore,
  commands: PaneCommands,
  name: "withNotes" | "live",
  label: string,
  role?: "switch",
): HTMLElement {
  const box = element("input", { type: "checkbox", role });
  box.addEventListener("change", () => {
    store.set({ [name]: box.checked });
    void commands.keepSettings();
  });
  store.watch(
    (state) => state[name],
    (on) => (box.checked = on),
  );
  return element("label", { class: "choice" }, box, label);
}
