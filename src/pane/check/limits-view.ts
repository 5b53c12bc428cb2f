import { say } from "../../messages/pane-catalogue";
import { missingLimits } from "../state/checked-area";
import type { PaneCommands } from "../state/commands";
import { button, element } from "../kit/element";
import { limitInputs } from "../state/limit-inputs";
import type { PaneStore } from "../state/pane-state";

/** Limits of the specification for a sheet that has none of its own. */
export function limitsView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const inputs = limitInputs(store, commands);
  const view = element(
    "section",
    { class: "limits", "aria-labelledby": "fresh-limits-title" },
    element("h2", { id: "fresh-limits-title" }, say("pane-limits")),
    element("p", { class: "hint" }, say("pane-limits-hint")),
    element(
      "div",
      { class: "inputs" },
      ...inputs.map(({ field }) => field.view),
      button(say("pane-compare"), () => void commands.checkAgain()),
    ),
  );
  store.watch(
    ({ checked }) => checked,
    (checked) => {
      const missing = checked ? missingLimits(checked.result.columns) : [];
      view.hidden = missing.length === 0;
      for (const { which, field } of inputs) field.view.hidden = !missing.includes(which);
    },
  );
  return view;
}
