import { roundToStep } from "../measure/rounding";
import { number } from "./runner/argument";
import { lift } from "./runner/lift";

/**
 * Nearest multiple of a step; a value half-way goes to the even multiple, as ASTM E29 rounds. Spreadsheet rounding goes away from zero instead.
 * @customfunction ROUND.STEP ROUND.STEP
 * @param value Number to round.
 * @param step Step in the unit of the value, such as 0.25; 0 for no rounding.
 * @returns Nearest multiple of the step.
 */
export function roundStep(value: any[][], step: any[][]): any[][] {
  return roundedOf(value, step);
}
const roundedOf = lift([number("value"), { ...number("step"), setting: true }], roundToStep);
