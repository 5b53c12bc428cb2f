import { say } from "../../messages/pane-catalogue";
import type { PaneCommands } from "./commands";
import { numberInput, type NumberInput } from "../kit/number-input";
import type { PaneStore } from "./pane-state";
import { limitComplaint } from "./typed-limits";

/** Inputs for the limits of the specification, which are kept with the workbook. */
export function limitInputs(
  store: PaneStore,
  commands: PaneCommands,
): readonly { readonly which: "low" | "high"; readonly field: NumberInput }[] {
  return (["low", "high"] as const).map((which) => {
    const field = numberInput(say(`pane-${which}`), (typed) => {
      store.set({ [which]: typed });
      void commands.keepSettings();
    });
    store.watch(
      (state) => state[which],
      (typed) => field.show(typed),
    );
    store.watch(
      ({ low, high, decimal }) => limitComplaint(which, { low, high }, decimal),
      (complaint) => field.complain(complaint),
    );
    return { which, field };
  });
}
