import { issue, type Issue } from "../../measure/issue";

/** A calibrated cup holds this share of the bowl, % (from memory, ASTM C173 apparatus). */
export const CUP_PERCENT = 1;

/**
 * What is wrong with a number of calibrated cups, which is whole, 0 or more: the issue `cups-negative` or
 * `cups-not-whole-number`.
 */
export function notACount(cups: number): Issue | undefined {
  if (cups < 0) return issue("cups-negative", { value: cups });
  return Number.isInteger(cups) ? undefined : issue("cups-not-whole-number", { value: cups });
}
