import { say } from "../../messages/pane-catalogue";
import { element } from "../kit/element";
import { textInput } from "../kit/text-input";
import type { PaneCommands } from "../state/commands";
import type { PaneStore } from "../state/pane-state";
import { HEADING_FIELDS } from "./heading-words";
import type { HeadingOfSheet } from "./heading-of-sheet";

/** The inputs for what the sheet does not say itself at the head of a report. */
export interface HeadingInputs {
  readonly view: HTMLElement;
  offer(ofSheet: HeadingOfSheet): void;
}

export function headingInputs(store: PaneStore, commands: PaneCommands): HeadingInputs {
  const inputs = HEADING_FIELDS.map((field) => ({
    field,
    input: textInput(say(`report-head-${field}`), (typed) => {
      store.set({ heading: { ...store.get().heading, [field]: typed } });
      void commands.keepSettings();
    }),
  }));
  store.watch(
    ({ heading }) => heading,
    (heading) => inputs.forEach(({ field, input }) => input.show(heading[field] ?? "")),
  );
  return {
    view: element(
      "fieldset",
      { class: "inputs" },
      element("legend", {}, say("report-head")),
      element("p", { class: "hint" }, say("report-head-hint")),
      ...inputs.map(({ input }) => input.view),
    ),
    offer: (ofSheet) =>
      inputs.forEach(({ field, input }) => (input.view.hidden = ofSheet[field] !== undefined)),
  };
}
