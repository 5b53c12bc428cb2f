import { isBlank, isCellError, quoted, shownValue, type CellValue } from "./cell-value";
import { issue, isIssue, type Issue } from "./issue";
import { numberFromText, type DecimalMark } from "./number-from-cell";

const YES = new Set(["yes", "y", "true", "1", "x", "✓", "✔"]);
const NO = new Set(["no", "n", "false", "0", "none", "nil"]);

/** The text in a cell, trimmed; `undefined` for a blank; the issue `cell-error`. */
export function textFromCell(value: CellValue): string | undefined | Issue {
  if (isBlank(value)) return undefined;
  if (isCellError(value)) return issue("cell-error", { value: quoted(value) });
  return shownValue(value).trim();
}

/** Yes or no as people tick it; `undefined` for a blank; the issue `not-yes-or-no` or `cell-error`. */
export function yesOrNoFromCell(value: CellValue): boolean | undefined | Issue {
  const text = textFromCell(value);
  if (text === undefined || isIssue(text)) return text;
  const word = text.toLowerCase();
  if (YES.has(word)) return true;
  if (NO.has(word)) return false;
  return issue("not-yes-or-no", { value: quoted(value) });
}

const AMOUNT = /^[\d\s.,/¼½¾]*[\d¼½¾]/;

/**
 * Whether there was any of something: yes or no as people tick it, or an amount such as 8 or "8 oz".
 *
 * @returns `undefined` for a blank; the issue `not-yes-or-no`, or one of `numberFromText`.
 */
export function anyFromCell(
  value: CellValue,
  decimal: DecimalMark = ".",
): boolean | undefined | Issue {
  const amount = isCellError(value) ? null : AMOUNT.exec(shownValue(value).trim());
  if (!amount) return yesOrNoFromCell(value);
  const read = numberFromText(amount[0], decimal);
  return isIssue(read) ? read : read > 0;
}
