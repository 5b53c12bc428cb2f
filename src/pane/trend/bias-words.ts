import type { Bias } from "../../acceptance/bias/bias";
import { testsNeeded } from "../../acceptance/bias/tests-needed";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { shownChance, shownDeviation, typedText } from "../kit/shown-number";

/** Below this a difference is told from chance. */
export const TOLD_BELOW = 0.05;

/** More tests than these nobody makes for it. */
const MOST_NEEDED = 10_000;

/** Whether a difference is told from chance. */
export function isTold({ p }: Bias): boolean {
  return p !== undefined && p < TOLD_BELOW;
}

/** How many tests of each would be needed, rounded up; `undefined` where it cannot be told, or is too many. */
export function neededFor({ difference, scatter }: Bias): number | undefined {
  if (!difference || !scatter) return undefined;
  const needed = Math.ceil(testsNeeded(difference, scatter));
  return needed <= MOST_NEEDED ? needed : undefined;
}

/** A difference with its sign: "+0.25", "−0.3". */
export function shownDifference(difference: number, decimal: DecimalMark): string {
  const size = Number(Math.abs(difference).toFixed(2));
  const sign = size === 0 ? "±" : difference > 0 ? "+" : "−";
  return sign + typedText(size, decimal);
}

/** All that is known of one of them, in words. */
export function biasSentence(bias: Bias, decimal: DecimalMark): string {
  const { who, tests, difference, standardError, p } = bias;
  if (difference === undefined) return say("bias-not-compared", { who });
  const shown = { who, tests: String(tests), difference: shownDifference(difference, decimal) };
  if (standardError === undefined || p === undefined) return say("bias-line-alone", shown);
  const line = say("bias-line", { ...shown, error: shownDeviation(standardError, decimal) });
  return `${line} ${chanceSentence(bias, p)}`;
}

function chanceSentence(bias: Bias, p: number): string {
  const chance = shownChance(p);
  if (isTold(bias)) return say("bias-told", { chance });
  const needed = neededFor(bias);
  return needed === undefined
    ? say("bias-not-told-ever", { chance })
    : say("bias-not-told", { chance, needed: String(needed) });
}
