import { chanceWithin } from "../acceptance/chance-within";
import { checkTestDecision } from "../acceptance/check-test";
import { compareRounded } from "../acceptance/compare-rounded";
import { deviationOfResult } from "../acceptance/deviation-of-result";
import { guardedLimits } from "../acceptance/guarded-limits";
import { compareWithLimits } from "../acceptance/limits";
import { marginToLimits } from "../acceptance/margin";
import { specLimits, unsoundLimits } from "../acceptance/spec-limits";
import { at, isIssue } from "../measure/issue";
import { differenceAmongPercents } from "../measure/percent-as-share";
import { number, optional, setting, text } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";
import { rowByRow } from "./runner/row-by-row";

const limits = [setting(number("low")), setting(number("high"))] as const;

/**
 * Limits from a target and its tolerance: low and high, side by side.
 * @customfunction SPEC.LIMITS SPEC.LIMITS
 * @param target Specified value.
 * @param [tolerance] How far a result may lie below the target, and above it too unless the next argument is given; 1.5 unless given.
 * @param [toleranceAbove] How far a result may lie above the target.
 * @returns Low limit and high limit, in the unit of the target.
 * @example =FRESH.SPEC.LIMITS(6) gives 4.5, 7.5 [6 ± 1.5]
 * @example =FRESH.SPEC.LIMITS(6, 1, 2) gives 5, 8 [6 − 1 and 6 + 2]
 */
export function limitsFromTarget(
  target: any[][],
  tolerance?: any[][],
  toleranceAbove?: any[][],
): any[][] {
  return limitsOf(target, tolerance, toleranceAbove);
}
const limitsOf = rowByRow(
  [number("target"), setting(number("tolerance")), setting(number("tolerance above"))],
  2,
  (target, tolerance, above) => {
    const limits = specLimits(target, tolerance, above);
    return isIssue(limits) ? limits : [limits.low, limits.high];
  },
);

/**
 * Compares a result with its limits: "within", "below" or "above". A result on a limit is within. The number is compared as it is (absolute method of ASTM E29) unless places are given.
 * @customfunction SPEC.COMPARE SPEC.COMPARE
 * @param value Result, in the unit of the limits.
 * @param low Low limit; blank for none.
 * @param high High limit; blank for none.
 * @param [places] Decimal places to round the result to before it is compared, half to the even place (rounding method of ASTM E29).
 * @returns "within", "below" or "above".
 * @example =FRESH.SPEC.COMPARE(7.5, 4.5, 7.5) gives "within" [a result on a limit is within]
 * @example =FRESH.SPEC.COMPARE(4.49, 4.5, 7.5) gives "below" [the number as it is]
 * @example =FRESH.SPEC.COMPARE(4.49, 4.5, 7.5, 1) gives "within" [4.49 is 4.5 to one place]
 */
export function compareWithSpecification(
  value: any[][],
  low: any[][],
  high: any[][],
  places?: any[][],
): any[][] {
  return comparisonOf(value, low, high, places);
}
const comparisonOf = cellByCell(
  [number("value"), ...limits, setting(number("places"))],
  (value, low, high, places) => {
    const wrong = unsoundLimits({ low, high }, value);
    if (wrong) return wrong;
    if (places === undefined) return compareWithLimits(value, low, high);
    return compareRounded(value, { low, high }, places);
  },
);

/**
 * Distance of a result to the nearer limit, negative outside.
 * @customfunction SPEC.MARGIN SPEC.MARGIN
 * @param value Result, in the unit of the limits.
 * @param low Low limit; blank for none.
 * @param high High limit; blank for none.
 * @returns Margin, in the unit of the limits.
 * @example =FRESH.SPEC.MARGIN(7.25, 4.5, 7.5) gives 0.25 [7.50 − 7.25]
 * @example =FRESH.SPEC.MARGIN(7.75, 4.5, 7.5) gives -0.25 [7.50 − 7.75]
 */
export function marginToSpecification(value: any[][], low: any[][], high: any[][]): any[][] {
  return marginOf(value, low, high);
}
const marginOf = cellByCell(
  [number("value"), ...limits],
  (value, low, high) =>
    unsoundLimits({ low, high }, value) ?? marginToLimits(value, { low, high })!,
);

/**
 * Chance that the true value lies within the limits, for a normal error of the test (JCGM 106). The published precision is from memory, to be verified against the standard in force; better give your own deviation.
 * @customfunction SPEC.CHANCE SPEC.CHANCE
 * @param value Result, in the unit of the limits.
 * @param low Low limit; blank for none.
 * @param high High limit; blank for none.
 * @param [deviation] Standard deviation of one result, in the unit of the limits.
 * @param [method] Method whose published precision is taken where no deviation is given: "C173" unless given (11 % of the value), "C231" (0.28, for Type A and up to 7 %), "C138" (lb/ft³), "C138M" (kg/m³), "C143", "C143M", "C1064", "C1064M".
 * @returns Chance, 0 to 1.
 * @example =FRESH.SPEC.CHANCE(7.25, 4.5, 7.5, 0.28) gives 0.814 [share of a normal distribution below (7.5 − 7.25) / 0.28 = 0.893]
 * @example =FRESH.SPEC.CHANCE(7.25, 4.5, 7.5, , "C231") gives 0.814 [the same: 0.28 is the deviation of C231; from memory, ASTM C231]
 */
export function chanceWithinSpecification(
  value: any[][],
  low: any[][],
  high: any[][],
  deviation?: any[][],
  method?: any[][],
): any[][] {
  return chanceOf(value, low, high, deviation, method);
}
const precision = [setting(number("deviation")), setting(text("method"))] as const;
const chanceOf = cellByCell(
  [number("value"), ...limits, ...precision],
  (value, low, high, deviation, method) => {
    const deviationAt = deviationOfResult(deviation, method);
    if (isIssue(deviationAt)) return deviationAt;
    const wrong =
      unsoundLimits({ low, high }, value) ??
      at("deviation", differenceAmongPercents(deviation, value, low, high));
    if (wrong) return wrong;
    const own = at("value", deviationAt(value));
    return isIssue(own) ? own : chanceWithin(value, { low, high }, own);
  },
);

/**
 * Narrower limits, side by side, that hold the chance of false acceptance at a limit to the risk given: concrete whose true value lies at a limit is measured within them no more often than that.
 * @customfunction SPEC.GUARD SPEC.GUARD
 * @param low Low limit; blank for none.
 * @param high High limit; blank for none.
 * @param risk Chance of false acceptance at a limit, above 0 and at most 0.5, such as 0.05.
 * @param [deviation] Standard deviation of one result, in the unit of the limits.
 * @param [method] Method whose published precision is taken where no deviation is given: "C173" unless given, and as for SPEC.CHANCE. From memory, to be verified against the standard in force.
 * @returns Guarded low limit and guarded high limit; blank where there is no limit.
 * @example =FRESH.SPEC.GUARD(4.5, 7.5, 0.05, 0.28) gives 4.9606, 7.0394 [1.64485 × 0.28 = 0.4606 inside the limits]
 * @example =FRESH.SPEC.GUARD(4.5, 7.5, 0.05, , "C173") gives 5.3142, 6.1430 [1.64485 × 11 % of each limit; from memory, ASTM C173]
 */
export function guardedSpecification(
  low: any[][],
  high: any[][],
  risk: any[][],
  deviation?: any[][],
  method?: any[][],
): any[][] {
  return guardedOf(low, high, risk, deviation, method);
}
const guardedOf = rowByRow(
  [
    optional(number("low")),
    optional(number("high")),
    { ...number("risk"), setting: true },
    ...precision,
  ],
  2,
  (low, high, risk, deviation, method) => {
    const deviationAt = deviationOfResult(deviation, method);
    if (isIssue(deviationAt)) return deviationAt;
    const guarded =
      unsoundLimits({ low, high }) ??
      at("deviation", differenceAmongPercents(deviation, low, high)) ??
      guardedLimits({ low, high }, risk, deviationAt);
    return isIssue(guarded) ? guarded : [guarded.low ?? "", guarded.high ?? ""];
  },
);

/**
 * What to do with a load by the check-test rule: "accept", "check test" or "reject". A result outside is checked on another portion of the sample; a second failure fails the concrete. By this rule of ASTM C94 they are not averaged; DISPOSITION has others.
 * @customfunction SPEC.ACCEPT SPEC.ACCEPT
 * @param first First result, in the unit of the limits.
 * @param low Low limit; blank for none.
 * @param high High limit; blank for none.
 * @param [check] Result of the check test; blank when not made yet.
 * @returns "accept", "check test" or "reject".
 * @example =FRESH.SPEC.ACCEPT(7.75, 4.5, 7.5) gives "check test" [7.75 lies above 7.5]
 * @example =FRESH.SPEC.ACCEPT(7.75, 4.5, 7.5, 4.25) gives "reject" [both fail, though their mean lies within]
 */
export function acceptByCheckTest(
  first: any[][],
  low: any[][],
  high: any[][],
  check?: any[][],
): any[][] {
  return decisionOf(first, low, high, check);
}
const decisionOf = cellByCell(
  [number("first"), ...limits, optional(number("check"))],
  (first, low, high, check) =>
    unsoundLimits({ low, high }, first, check) ?? checkTestDecision(first, { low, high }, check),
);
