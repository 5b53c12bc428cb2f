import { compareWithLimits, type SpecLimits } from "./limits";
import { normalShareBetween } from "./normal-distribution";

/**
 * The chance that the true value lies within the limits, given one result with a normal error.
 *
 * @param value Result, in the unit of the limits.
 * @param limits Either may be absent; without any the chance is 1.
 * @param deviation Standard deviation of the error, in the unit of the value, 0 or more. With 0 the
 *   result is taken as true.
 * @returns 0 to 1.
 * @see JCGM 106:2012, conformance probability of a normal distribution, nothing known beforehand.
 */
export function chanceWithin(value: number, { low, high }: SpecLimits, deviation: number): number {
  if (deviation === 0) return compareWithLimits(value, low, high) === "within" ? 1 : 0;
  return normalShareBetween(
    low === undefined ? -Infinity : (low - value) / deviation,
    high === undefined ? Infinity : (high - value) / deviation,
  );
}
