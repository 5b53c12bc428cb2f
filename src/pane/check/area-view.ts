import { blockAddress } from "../../hosts/cell-address";
import { say } from "../../messages/pane-catalogue";
import { button, element } from "../kit/element";
import type { PaneCommands } from "../state/commands";
import type { PaneStore } from "../state/pane-state";

/** Which cells were checked, and how to check others. */
export function areaView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const checked = element("summary");
  const input = element("input", { type: "text", autocomplete: "off", spellcheck: "false" });
  const form = element(
    "form",
    { class: "area" },
    element("label", { class: "input" }, element("span", {}, say("pane-area")), input),
    element("button", { type: "submit" }, say("pane-area-check")),
    button(say("pane-area-selection"), () => void commands.checkSelection()),
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void commands.checkCells(input.value);
  });
  store.watch(
    (state) => state.checked?.read,
    (read) => {
      checked.textContent = read
        ? say("pane-area-checked", { address: read.address })
        : say("pane-area-change");
      input.value = read ? blockAddress(read.area) : "";
    },
  );
  return element("details", { class: "area-checked" }, checked, form);
}

/** The sheets that hold tests, where the one in front holds none. */
export function otherSheetsView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const view = element("div", {
    class: "actions",
    role: "group",
    "aria-label": say("pane-sheets-with-tests"),
  });
  store.watch(
    ({ elsewhere }) => elsewhere,
    (elsewhere) => {
      view.hidden = elsewhere.length === 0;
      view.replaceChildren(
        ...elsewhere.map((sheet) =>
          button(
            say("pane-check-sheet", { sheet: sheet.sheetName }),
            () => void commands.checkSheet(sheet),
          ),
        ),
      );
      // The buttons stand above the list that may have been scrolled to.
      view.scrollIntoView({ block: "center" });
    },
  );
  return view;
}
