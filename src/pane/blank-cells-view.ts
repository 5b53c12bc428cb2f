import type { SheetHost } from "../hosts/sheet-host";
import { say } from "../messages/pane-catalogue";
import { element } from "./kit/element";
import type { PaneStore } from "./state/pane-state";

/** Says where worksheet functions may get a blank cell as 0; nothing where they do not. */
export function blankCellsView(store: PaneStore, host: SheetHost): HTMLElement {
  const line = element("p", { class: "quiet", role: "note" });
  const tell = (): void => {
    line.textContent = blankCellsSentence(host.howBlanksCome?.() ?? "blank");
    line.hidden = line.textContent === "";
  };
  tell();
  // A function may have seen it meanwhile.
  store.watch(({ checked }) => checked, tell);
  document.addEventListener("visibilitychange", tell);
  return line;
}

/** What there is to say of it. */
export function blankCellsSentence(how: "blank" | "zero" | "unknown"): string {
  return how === "blank" ? "" : say(`pane-blank-cells-${how}`);
}
