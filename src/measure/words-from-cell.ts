import { cellErrorIssue } from "./cell-error-issue";
import { isBlank, isCellError, quoted, shownValue, type CellValue } from "./cell-value";
import { folded } from "./folded";
import { issue, isIssue, type Issue } from "./issue";
import { saysNone } from "./spelled-number";

const YES = new Set("yes y true 1 x ✓ ✔ ☑ si s oui o ja j".split(" "));
const NO = new Set("no n false 0 non nein".split(" "));

/** The text in a cell, trimmed; `undefined` for a blank; the issue `cell-error`. */
export function textFromCell(value: CellValue): string | undefined | Issue {
  if (isBlank(value)) return undefined;
  if (isCellError(value)) return cellErrorIssue(value);
  return shownValue(value).trim();
}

/** Yes or no as people tick it, in English, Spanish, French or German; `undefined` for a blank; the issue `not-yes-or-no` or `cell-error`. */
export function yesOrNoFromCell(value: CellValue): boolean | undefined | Issue {
  const text = textFromCell(value);
  if (text === undefined || isIssue(text)) return text;
  const word = folded(text);
  if (YES.has(word)) return true;
  if (NO.has(word) || saysNone(word)) return false;
  return issue("not-yes-or-no", { value: quoted(value) });
}
