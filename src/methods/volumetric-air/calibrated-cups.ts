import { Problem } from "../../measure/problem";

/** A calibrated cup holds this share of the bowl, % (from memory, ASTM C173 apparatus). */
export const CUP_PERCENT = 1;

/**
 * The % of air that the calibrated cups of water stand for.
 *
 * @param cups How many cups were added; whole, 0 or more.
 * @throws Problem `cups-negative`, `cups-not-whole-number`.
 */
export function calibratedCups(cups: number): number {
  if (cups < 0) throw new Problem("cups-negative", { value: cups });
  if (!Number.isInteger(cups)) throw new Problem("cups-not-whole-number", { value: cups });
  return cups * CUP_PERCENT;
}
