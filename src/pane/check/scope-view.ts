import type { ReadScope } from "../../hosts/sheet-host";
import { say } from "../../messages/pane-catalogue";
import type { PaneCommands } from "../state/commands";
import { button, element } from "../kit/element";
import type { PaneStore } from "../state/pane-state";

const SCOPES: readonly ReadScope[] = ["table", "selection"];

/** Where it is chosen what to check, with the button that checks it. */
export function scopeView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const radios = SCOPES.map((scope) => {
    const radio = element("input", { type: "radio", name: "fresh-scope", value: scope });
    radio.addEventListener("change", () => {
      store.set({ scope });
      void commands.keepSettings();
    });
    return radio;
  });
  store.watch(
    ({ scope }) => scope,
    (scope) => radios.forEach((radio) => (radio.checked = radio.value === scope)),
  );
  const check = button(say("pane-check"), () => void commands.check(), "main-button");
  store.watch(
    ({ work }) => work !== undefined,
    (busy) => check.setAttribute("aria-disabled", String(busy)),
  );
  return element(
    "section",
    { class: "scope" },
    element(
      "fieldset",
      {},
      element("legend", {}, say("pane-scope")),
      ...radios.map((radio, i) =>
        element("label", { class: "choice" }, radio, say(`pane-scope-${SCOPES[i]!}`)),
      ),
    ),
    check,
  );
}
