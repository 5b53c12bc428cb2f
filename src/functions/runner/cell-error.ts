import { isIssue, issue, issueSentence, type Issue } from "../../measure/issue";

/** What a worksheet function puts into one cell. */
export type CellResult = number | string | boolean;

/** The cell error for an issue: #N/A for a result that is not there, else #VALUE!, with the sentence. */
export function cellErrorFor(issue: Issue): CustomFunctions.Error {
  const code = issue.unavailable
    ? CustomFunctions.ErrorCode.notAvailable
    : CustomFunctions.ErrorCode.invalidValue;
  return new CustomFunctions.Error(code, issueSentence(issue));
}

/** A result on its way into a cell: an issue becomes an error, and no number leaves that a cell cannot hold. */
export function shownInCell(result: CellResult | Issue): CellResult | CustomFunctions.Error {
  if (typeof result !== "number") return isIssue(result) ? cellErrorFor(result) : result;
  return Number.isFinite(result) ? result + 0 : cellErrorFor(issue("result-beyond-a-cell"));
}

/** The same result; an issue is the failure of the whole function. */
export function orThrow<T>(result: T | Issue): T {
  if (isIssue(result)) throw cellErrorFor(result);
  return result;
}

/** The cells of a result; an error in the only cell is the failure of the whole function. */
export function withoutLoneError(cells: unknown[][]): any[][] {
  const [only] = cells[0]!;
  if (cells.length === 1 && only instanceof CustomFunctions.Error) throw only;
  return cells;
}
