import { isBlank, isCellError, shownValue, type CellValue } from "./cell-value";
import { numberFromText, type DecimalMark } from "./number-from-cell";
import { Problem } from "./problem";

const YES = new Set(["yes", "y", "true", "1", "x", "✓", "✔"]);
const NO = new Set(["no", "n", "false", "0", "none", "nil"]);

/** The text in a cell, trimmed; `undefined` for a blank. Throws Problem `cell-error`. */
export function textFromCell(value: CellValue): string | undefined {
  if (isBlank(value)) return undefined;
  if (isCellError(value)) throw new Problem("cell-error", { value: value.error });
  return shownValue(value).trim();
}

/** Yes or no as people tick it; `undefined` for a blank. Throws Problem `not-yes-or-no`. */
export function yesOrNoFromCell(value: CellValue): boolean | undefined {
  const word = textFromCell(value)?.toLowerCase();
  if (word === undefined) return undefined;
  if (YES.has(word)) return true;
  if (NO.has(word)) return false;
  throw new Problem("not-yes-or-no", { value: shownValue(value) });
}

const AMOUNT = /^[\d\s.,/¼½¾]*[\d¼½¾]/;

/**
 * Whether there was any of something: yes or no as people tick it, or an amount such as 8 or "8 oz".
 *
 * @returns `undefined` for a blank.
 * @throws Problem `not-yes-or-no`, `cell-error`.
 */
export function anyFromCell(value: CellValue, decimal: DecimalMark = "."): boolean | undefined {
  const amount = AMOUNT.exec(textFromCell(value) ?? "");
  return amount ? numberFromText(amount[0], decimal) > 0 : yesOrNoFromCell(value);
}
