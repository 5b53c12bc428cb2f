import { isBlank, isCellError, shownValue, type CellValue } from "./cell-value";
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
