import { quoted, ZERO_OR_BLANK, type CellError } from "./cell-value";
import { issue, type Issue } from "./issue";

/** Why a cell with an error cannot be read: the issue `cell-error`, or `zero-or-blank`. */
export function cellErrorIssue(cell: CellError): Issue<"cell-error" | "zero-or-blank"> {
  if (cell.error === ZERO_OR_BLANK.error) return issue("zero-or-blank");
  return issue("cell-error", { value: quoted(cell) });
}
