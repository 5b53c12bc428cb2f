import { at, issue, type Issue } from "../measure/issue";
import { roundToStep } from "../measure/rounding";
import { compareWithLimits, type SpecLimits, type Verdict } from "./limits";

/**
 * Compares a result with its limits, rounded first to the last place of the limits: the rounding
 * method of ASTM E29. Half goes to the even place.
 *
 * @param value Result, in the unit of the limits.
 * @param limits Either may be absent.
 * @param places Decimal places to round to; a whole number, negative for tens, hundreds.
 * @returns The verdict; the issue `places-not-whole`.
 * @see ASTM E29, which leaves it to the specification whether to round (E29-93a, abstract).
 */
export function compareRounded(
  value: number,
  { low, high }: SpecLimits,
  places: number,
): Verdict | Issue {
  if (!Number.isInteger(places) || Math.abs(places) > 9) {
    return at("places", issue("places-not-whole", { value: places }));
  }
  return compareWithLimits(roundToStep(value, 10 ** -places), low, high);
}
