import Big from "big.js";
import { Problem } from "./problem";

/**
 * Rounds to the nearest multiple of a step; a value half-way goes to the even multiple.
 *
 * Spreadsheet rounding goes half away from zero instead, and binary fractions make a half look like
 * slightly more or less. So the arithmetic is decimal, on the 15 digits that a cell can show.
 *
 * @param value Any finite number.
 * @param step Size of the step, above 0, in the unit of the value; 0 leaves the value as it is.
 * @returns The multiple of the step. Example: 5.125 in steps of 0.25 is 5.
 * @throws Problem `step-not-positive`.
 * @see ASTM E29, rounding method: half to the even multiple.
 */
export function roundToStep(value: number, step: number): number {
  if (!(step >= 0) || !Number.isFinite(step))
    throw new Problem("step-not-positive", { value: step });
  if (step === 0) return value;
  const unit = asShown(step);
  const multiple = asShown(value).div(unit).round(0, Big.roundHalfEven);
  // Number(-0) would show as "-0" in some hosts.
  return multiple.times(unit).toNumber() + 0;
}

/** Takes the binary noise out of a sum or difference of percentages: 0.35 − 0.1 is 0.25. */
export function exact(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}

function asShown(value: number): Big {
  return new Big(value.toPrecision(15));
}
