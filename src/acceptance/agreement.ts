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
 * @throws Problem as `precisionOfMethod` and `differenceAt`.
 * @see ASTM C670: d2s is 2√2 standard deviations (from memory).
 */
export function agreementLimit(
  a: number,
  b: number,
  method: string,
  operators: Operators = "several",
): number {
  const precision = precisionOfMethod(method);
  // Each is held to the unit by itself: a slip in one can hide in the mean.
  for (const value of [a, b]) differenceAt(precision, value, operators);
  return exact(differenceAt(precision, (a + b) / 2, operators));
}

/** Whether two results agree: they differ by no more than `agreementLimit`. Same errors. */
export function resultsAgree(
  a: number,
  b: number,
  method: string,
  operators: Operators = "several",
): boolean {
  return exact(Math.abs(a - b)) <= agreementLimit(a, b, method, operators);
}
