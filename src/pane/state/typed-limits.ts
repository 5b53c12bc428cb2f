import type { SpecLimits } from "../../acceptance/limits";
import { isIssue, issueSentence } from "../../measure/issue";
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

/** What is wrong with one of two limits as they are typed; "" for nothing. The high one tells that they cross. */
export function limitComplaint(
  which: "low" | "high",
  typed: { readonly low: string; readonly high: string },
  decimal: DecimalMark,
): string {
  const [low, own] = [typed.low, typed[which]].map((text) =>
    text.trim() === "" ? undefined : numberFromText(text, decimal),
  );
  if (isIssue(own)) return issueSentence(own);
  const crossed = which === "high" && typeof low === "number" && own !== undefined && low > own;
  return crossed ? say("limits-crossed", { low, high: own }) : "";
}
