import { element } from "../kit/element";
import type { PaneCommands } from "./commands";
import type { PaneStore } from "./pane-state";

/**
 * A box for a setting that is kept with the workbook.
 *
 * @param then Called after the user has changed it.
 */
export function settingBox(
  store: PaneStore,
  commands: PaneCommands,
  name: "marking" | "withNotes" | "live",
  label: string,
  then?: (on: boolean) => void,
): HTMLElement {
  const box = element("input", { type: "checkbox", role: name === "live" ? "switch" : undefined });
  box.addEventListener("change", () => {
    store.set({ [name]: box.checked });
    void commands.keepSettings();
    then?.(box.checked);
  });
  store.watch(
    (state) => state[name],
    (on) => (box.checked = on),
  );
  return element("label", { class: "choice" }, box, label);
}
