import type { SpecLimits } from "../acceptance/limits";
import type { DecimalMark } from "../measure/number-from-cell";
import { Problem } from "../measure/problem";
import { say } from "../messages/catalogue";
import { typedNumber } from "./checked-area";
import type { PaneCommands } from "./commands";
import { numberInput, type NumberInput } from "./number-input";
import type { PaneStore } from "./pane-state";

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
    return { which, field };
  });
}

/** Limits as they are typed. @throws Problem `limits-crossed` and those of `typedNumber`. */
export function typedLimits(
  typed: { readonly low: string; readonly high: string },
  decimal: DecimalMark,
): SpecLimits {
  const low = typedNumber(typed.low, say("pane-low"), decimal);
  const high = typedNumber(typed.high, say("pane-high"), decimal);
  if (low !== undefined && high !== undefined && low > high) {
    throw new Problem("limits-crossed", { low, high });
  }
  return { low, high };
}
