import { Problem } from "../../measure/problem";
import { issueSentence } from "../../measure/issue";

/** The cell error for a problem: #N/A for a result that is not there, else #VALUE!, with the sentence. */
export function cellErrorFor(problem: unknown, where = ""): CustomFunctions.Error {
  if (!(problem instanceof Problem)) throw problem;
  const code = problem.unavailable
    ? CustomFunctions.ErrorCode.notAvailable
    : CustomFunctions.ErrorCode.invalidValue;
  return new CustomFunctions.Error(code, issueSentence(problem.issue, problem.place || where));
}

/** The result of a calculation for one cell, or the error that the cell shows instead. */
export function cellOrError<T>(compute: () => T): T | CustomFunctions.Error {
  try {
    return compute();
  } catch (problem) {
    return cellErrorFor(problem);
  }
}
