import { issue, type Issue } from "./issue";
import { exact } from "./rounding";

/**
 * No air content, limit of one or reading of a meter is so small, but for 0; a cell with a percentage
 * format holds such a number: 0.0575 for the 5.75 % that it shows.
 */
const LEAST_PERCENT = 0.1;

/** The percent where a value below 0.1 can only be a share of one; `undefined` for any other value. */
export function percentFromShare(value: number): number | undefined {
  return value > 0 && value < LEAST_PERCENT ? exact(value * 100) : undefined;
}

/** The issue `percent-as-share` of the first of some values of air that can only be a share of one. */
export function percentAsShare(...values: (number | undefined)[]): Issue | undefined {
  for (const value of values) {
    const percent = value === undefined ? undefined : percentFromShare(value);
    if (percent !== undefined) return issue("percent-as-share", { value: value!, percent });
  }
  return undefined;
}
