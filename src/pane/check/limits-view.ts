import { say } from "../../messages/pane-catalogue";
import { missingLimits, type CheckedArea } from "../state/checked-area";
import type { PaneCommands } from "../state/commands";
import { button, element } from "../kit/element";
import { limitInputs } from "../state/limit-inputs";
import type { PaneStore } from "../state/pane-state";

/** Whether a test has no limits from the sheet or its setup. */
function lacksLimits({ result }: CheckedArea): boolean {
  return result.results.some(
    ({ state, limits }) => state !== "" && limits.low === undefined && limits.high === undefined,
  );
}

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
      const { low, high } = store.get();
      const isTyped = `${low}${high}`.trim() !== "";
      view.hidden = !checked || missing.length === 0 || (!isTyped && !lacksLimits(checked));
      for (const { which, field } of inputs) field.view.hidden = !missing.includes(which);
    },
  );
  return view;
}
