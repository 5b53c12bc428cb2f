import { at, isIssue, issue, type Issue } from "../measure/issue";
import { deviationAt, precisionOfMethod, USUAL_METHOD } from "./precision";

/** The standard deviation that a result of a value has. */
export type DeviationAt = (value: number) => number | Issue;

/**
 * The standard deviation of one result, for any value it may have.
 *
 * @param given The user's own deviation, above 0, in the unit of the result; it goes before all.
 * @param method Method whose published precision is taken instead; C173 unless given.
 * @returns The deviation at a value, or an issue of `deviationAt`. The issue `deviation-not-above-zero`, or
 *   one of `precisionOfMethod`.
 */
export function deviationOfResult(
  given: number | undefined,
  method: string = USUAL_METHOD,
): DeviationAt | Issue {
  // A method that nobody knows is said so, also where it is not needed.
  const published = precisionOfMethod(method);
  if (isIssue(published)) return published;
  if (given === undefined) return (value) => deviationAt(published, value);
  return given > 0
    ? () => given
    : at("deviation", issue("deviation-not-above-zero", { value: given }));
}
