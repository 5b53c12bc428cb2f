import { say } from "../../messages/pane-catalogue";
import { button, element } from "../kit/element";
import type { PaneCommands } from "../state/commands";
import { settingBox } from "../state/setting-box";
import type { PaneStore } from "../state/pane-state";

/** What is always in sight: the check, whether it marks what it finds, and the way to take marks off. */
export function checkBar(store: PaneStore, commands: PaneCommands): HTMLElement {
  const check = button(say("pane-check"), () => void commands.check(), "main-button");
  const unmark = button(say("pane-unmark"), () => void commands.unmark());
  store.watch(
    ({ work }) => work !== undefined,
    (busy) => [check, unmark].forEach((each) => each.setAttribute("aria-disabled", String(busy))),
  );
  const marking = settingBox(store, commands, "marking", say("pane-mark-found"), (on) => {
    // Whoever asks for marks after a check wants those of this one.
    if (on) void commands.mark();
  });
  return element("div", { class: "check-bar" }, check, marking, unmark);
}
