import { isIssue, issueSentence, type Issue } from "../../src/measure/issue";

/** The result of a calculation that must have one. */
export function resultOf<T>(result: T | Issue): T {
  if (isIssue(result)) throw new Error(issueSentence(result));
  return result;
}
