import { at, isIssue, type Issue } from "../measure/issue";
import { exact } from "../measure/rounding";
import type { Operators } from "./operators";
import { differenceAt, precisionOfMethod } from "./precision";

/**
 * The most by which two results of the same concrete should differ, by the published precision of
 * the method (d2s). Where the precision depends on the value, the mean of the two is what counts.
 *
 * @param a One result, in the method's unit.
 * @param b The other.
 * @param method Number of the method, as `precisionOfMethod` takes it.
 * @param operators Whether one operator made both tests.
 * @returns In the method's unit; an issue of `precisionOfMethod` or `differenceAt`.
 * @see ASTM C670: d2s is 2√2 standard deviations (from memory).
 */
export function agreementLimit(
  a: number,
  b: number,
  method: string,
  operators: Operators = "several",
): number | Issue {
  const precision = precisionOfMethod(method);
  if (isIssue(precision)) return precision;
  // Each is held to the unit by itself: a slip in one can hide in the mean.
  for (const [place, value] of Object.entries({ a, b })) {
    const difference = differenceAt(precision, value, operators);
    if (isIssue(difference)) return at(place, difference);
  }
  const difference = differenceAt(precision, (a + b) / 2, operators);
  return isIssue(difference) ? difference : exact(difference);
}

/** Whether two results agree: they differ by no more than `agreementLimit`. Same issues. */
export function resultsAgree(
  a: number,
  b: number,
  method: string,
  operators: Operators = "several",
): boolean | Issue {
  const limit = agreementLimit(a, b, method, operators);
  return isIssue(limit) ? limit : exact(Math.abs(a - b)) <= limit;
}
