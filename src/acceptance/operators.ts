import { cellErrorIssue } from "../measure/cell-error-issue";
import { isCellError, quoted, shownValue, type CellValue } from "../measure/cell-value";
import { issue, type Issue } from "../measure/issue";

/** Whether one operator made both tests or several did, each with his own equipment. */
export type Operators = "one" | "several";

const SPELLINGS: Readonly<Record<Operators, readonly string[]>> = {
  one: ["one", "1", "single", "same", "one operator", "single operator", "single-operator"],
  several: ["several", "2", "two", "multi", "multiple", "several operators", "multi-operator"],
};

/** The operators that a word or a count in a cell stands for; the issue `operators-unknown` or `cell-error`. */
export function operatorsFromCell(cell: CellValue): Operators | Issue {
  if (isCellError(cell)) return cellErrorIssue(cell);
  const written = shownValue(cell).trim().toLowerCase();
  for (const operators of ["one", "several"] as const) {
    if (SPELLINGS[operators].includes(written)) return operators;
  }
  return issue("operators-unknown", { value: quoted(cell) });
}
