import { at, isIssue, issue, unavailable, type Issue } from "../measure/issue";
import type { DeviationAt } from "./deviation-of-result";
import type { SpecLimits } from "./limits";
import { normalPointAt } from "./normal-distribution";

/**
 * Narrower limits that guard against accepting by chance what lies at a limit.
 *
 * Concrete whose true value lies exactly at a limit is measured within the guarded limits with no
 * more than the given chance: each limit moves inwards by the normal point of the risk times the
 * deviation that the method has there. The deviation is the one at the limit, because that is where
 * such concrete lies; with a precision in per cent of the value the upper guard band is the wider.
 *
 * @param limits Limits of the specification; either may be absent and stays so.
 * @param risk Chance of false acceptance at a limit, above 0 and at most 0.5.
 * @param deviationOf Standard deviation of one result at a true value, in its unit.
 * @returns Guarded limits, unrounded. The issue `risk-out-of-range`, `guard-leaves-nothing` when the guarded
 *   limits cross, or one of the deviation.
 * @see JCGM 106:2012, acceptance intervals with guard bands.
 */
export function guardedLimits(
  { low, high }: SpecLimits,
  risk: number,
  deviationOf: DeviationAt,
): SpecLimits | Issue {
  if (!(risk > 0 && risk <= 0.5)) return at("risk", issue("risk-out-of-range", { value: risk }));
  const reach = -normalPointAt(risk);
  const below = low === undefined ? 0 : deviationOf(low);
  const above = high === undefined ? 0 : deviationOf(high);
  if (isIssue(below)) return at("low", below);
  if (isIssue(above)) return at("high", above);
  const guarded = {
    low: low === undefined ? undefined : low + reach * below,
    high: high === undefined ? undefined : high - reach * above,
  };
  if (guarded.low !== undefined && guarded.high !== undefined && guarded.low > guarded.high) {
    return unavailable("guard-leaves-nothing", { risk });
  }
  return guarded;
}
