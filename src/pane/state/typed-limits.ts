import type { SpecLimits } from "../../acceptance/limits";
import { numberFromText, type DecimalMark } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";

/** A number as typed into the pane; `undefined` where nothing is typed. */
export function typedNumber(
  typed: string,
  where: string,
  decimal: DecimalMark,
): number | undefined {
  if (typed.trim() === "") return undefined;
  return Problem.unless(numberFromText(typed, decimal), where);
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
