import { isBlank, isCellError, shownValue, type CellValue } from "./cell-value";
import { Problem } from "./problem";

/** How decimals are written in the column or the workbook. */
export type DecimalMark = "." | ",";

const WHOLE_AND_FRACTION = /^([+-]?)(?:(\d+)[ -]+)?(\d+)\s*\/\s*(\d+)$/;
const PLAIN = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
const THOUSANDS = /^[+-]?[1-9]\d{0,2}(,\d{3})+\.\d+$/;
const COMMA = /^[+-]?\d*,\d+$/;
const VULGAR: Readonly<Record<string, string>> = { "¼": "1/4", "½": "1/2", "¾": "3/4" };

/**
 * Reads the number in a cell.
 *
 * @param value Cell value. Text is read where it can be read only one way: "5.25", "5.25 %",
 *   "5 1/4", "5¼", "1,250.5".
 * @param decimal "," where the column or the workbook writes decimal commas.
 * @returns The number, or `undefined` where the cell is blank: a blank is not a zero.
 * @throws Problem `not-a-number`, `comma-is-unclear` or `cell-error`.
 */
export function numberFromCell(value: CellValue, decimal: DecimalMark = "."): number | undefined {
  if (isBlank(value)) return undefined;
  if (isCellError(value)) throw new Problem("cell-error", { value: value.error });
  if (typeof value === "number" && Number.isFinite(value)) return value;
  if (typeof value !== "string") throw new Problem("not-a-number", { value: shownValue(value) });
  return numberFromText(value, decimal);
}

/** Reads a number that somebody wrote as text. Same rules and errors as `numberFromCell`. */
export function numberFromText(written: string, decimal: DecimalMark = "."): number {
  const text = written
    .replace(/[¼½¾]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/−/g, "-")
    .replace(/%/g, "")
    .trim();
  const fraction = WHOLE_AND_FRACTION.exec(text);
  if (fraction && Number(fraction[4]) > 0) {
    const size = Number(fraction[2] ?? 0) + Number(fraction[3]) / Number(fraction[4]);
    return fraction[1] === "-" ? -size : size;
  }
  if (PLAIN.test(text)) return Number(text);
  if (decimal === "," && COMMA.test(text)) return Number(text.replace(",", "."));
  if (THOUSANDS.test(text)) return Number(text.replace(/,/g, ""));
  if (COMMA.test(text)) {
    throw new Problem("comma-is-unclear", { value: written, read: text.replace(",", ".") });
  }
  throw new Problem("not-a-number", { value: written });
}
