import { issue, type Issue } from "./issue";
import { exact } from "./rounding";

/**
 * No air content, limit of one or reading of a meter is so small, but for 0; a cell with a percentage
 * format holds such a number: 0.0575 for the 5.75 % that it shows.
 */
const LEAST_PERCENT = 0.1;

/** No tolerance, standard deviation or aggregate correction factor in percent is so small, but for 0. */
const LEAST_DIFFERENCE = 0.02;

/** A number from here on beside one that may be a share of one is a percent, not such a share as well. */
const NO_SHARE_FROM = 1;

/** The percent where a value below 0.1 can only be a share of one; `undefined` for any other value. */
export function percentFromShare(value: number, least = LEAST_PERCENT): number | undefined {
  return value > 0 && value < least ? exact(value * 100) : undefined;
}

/** The issue `percent-as-share` of the first of some values of air that can only be a share of one. */
export function percentAsShare(...values: (number | undefined)[]): Issue | undefined {
  return firstShare(values, LEAST_PERCENT);
}

/** The same of a tolerance, a standard deviation or an aggregate correction factor in percent. */
export function differenceAsShare(value: number | undefined): Issue | undefined {
  return firstShare([value], LEAST_DIFFERENCE);
}

/**
 * The issue `percent-as-share` of numbers in one unit that may be other than percent, where some are
 * shares of one and others are not: 0.06 between limits of 4.5 and 7.5.
 */
export function shareAmongPercents(...values: (number | undefined)[]): Issue | undefined {
  return values.some(isNoShare) ? firstShare(values, LEAST_PERCENT) : undefined;
}

/** The same of a tolerance or a standard deviation beside the values that it belongs to. */
export function differenceAmongPercents(
  difference: number | undefined,
  ...values: (number | undefined)[]
): Issue | undefined {
  return values.some(isNoShare) ? differenceAsShare(difference) : undefined;
}

function isNoShare(value: number | undefined): boolean {
  return value !== undefined && Math.abs(value) >= NO_SHARE_FROM;
}

function firstShare(values: readonly (number | undefined)[], least: number): Issue | undefined {
  for (const value of values) {
    const percent = value === undefined ? undefined : percentFromShare(value, least);
    if (percent !== undefined) return issue("percent-as-share", { value: value!, percent });
  }
  return undefined;
}
