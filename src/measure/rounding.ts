import Big from "big.js";
import { issue, type Issue } from "./issue";

/** What percentages are snapped to. */
const BILLIONTHS = 1e9;

/** Below this size 15 digits, as many as a cell shows, reach down to the billionth. */
const WHOLE_BELOW = 1e6;

/** What is wrong with a step of rounding: the issue `step-not-positive`. A step of 0 leaves all as it is. */
export function notAStep(step: number): Issue | undefined {
  const isStep = step >= 0 && Number.isFinite(step);
  return isStep ? undefined : issue("step-not-positive", { value: step });
}

/**
 * Rounds to the nearest multiple of a step; a value half-way goes to the even multiple.
 *
 * Spreadsheet rounding goes half away from zero instead, and binary fractions make a half look like
 * slightly more or less. So the arithmetic is in whole billionths where value and step are such, and
 * otherwise decimal, on the 15 digits that a cell can show.
 *
 * @param value Any finite number.
 * @param step Size of the step, 0 or above, in the unit of the value; 0 leaves the value as it is.
 * @returns The multiple of the step. Example: 5.125 in steps of 0.25 is 5.
 * @see ASTM E29, rounding method: half to the even multiple.
 */
export function roundToStep(value: number, step: number): number {
  if (step === 0 || !Number.isFinite(value)) return value;
  const [whole, unit] = [billionths(value), billionths(step)];
  if (whole === undefined || unit === undefined) return roundDecimal(value, step);
  const over = whole % unit;
  const below = (whole - over) / unit;
  const pastHalf = 2 * Math.abs(over) - unit;
  const on = pastHalf > 0 || (pastHalf === 0 && below % 2 !== 0);
  return ((on ? below + Math.sign(over) : below) * unit) / BILLIONTHS + 0;
}

/** The number in whole billionths; `undefined` where it is not a multiple of one. */
function billionths(value: number): number | undefined {
  const whole = Math.round(value * BILLIONTHS);
  return Math.abs(value) < WHOLE_BELOW && whole / BILLIONTHS === value ? whole : undefined;
}

function roundDecimal(value: number, step: number): number {
  const unit = asShown(step);
  const multiple = asShown(value).div(unit).round(0, Big.roundHalfEven);
  // Number(-0) would show as "-0" in some hosts.
  return multiple.times(unit).toNumber() + 0;
}

function asShown(value: number): Big {
  return new Big(value.toPrecision(15));
}

/** Takes the binary noise out of a sum or difference of percentages: 0.35 − 0.1 is 0.25. */
export function exact(value: number): number {
  const whole = Math.round(value * BILLIONTHS);
  // Beyond that size numbers are further apart than a billionth.
  return Number.isSafeInteger(whole) ? whole / BILLIONTHS + 0 : value;
}
