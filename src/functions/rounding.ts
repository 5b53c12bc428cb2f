import { at } from "../measure/issue";
import { notAStep, roundToStep } from "../measure/rounding";
import { number } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";

/**
 * Nearest multiple of a step; a value half-way goes to the even multiple, as ASTM E29 rounds. Spreadsheet rounding goes away from zero instead.
 * @customfunction ROUND.STEP ROUND.STEP
 * @param value Number to round.
 * @param step Step in the unit of the value, such as 0.25; 0 for no rounding.
 * @returns Nearest multiple of the step.
 * @example =FRESH.ROUND.STEP(5.125, 0.25) gives 5.00 [half-way from 5.00 to 5.25; 5.00 is 20 steps, 5.25 is 21]
 * @example =FRESH.ROUND.STEP(6075, 50) gives 6100 [half-way from 6,050 to 6,100, which is 122 steps]
 */
export function roundStep(value: any[][], step: any[][]): any[][] {
  return roundedOf(value, step);
}
const roundedOf = cellByCell(
  [number("value"), { ...number("step"), setting: true }],
  (value, step) => at("step", notAStep(step)) ?? roundToStep(value, step),
);
