import { cellNumber, isBlank, isCellError, quoted, type CellValue } from "./cell-value";
import { issue, type Issue } from "./issue";

/** How decimals are written in the column or the workbook. */
export type DecimalMark = "." | ",";

const WHOLE_AND_FRACTION = /^([+-]?)(?:(\d+)[ -]+)?(\d+)\s*\/\s*(\d+)$/;
const PLAIN = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;
const THOUSANDS = /^[+-]?[1-9]\d{0,2}(,\d{3})+\.\d+$/;
const COMMA = /^[+-]?\d*,\d+$/;
const VULGAR: Readonly<Record<string, string>> = { "¼": "1/4", "½": "1/2", "¾": "3/4" };

/**
 * Reads the number in a cell.
 *
 * @param value Cell value. Text is read where it can be read only one way: "5.25", "5.25 %",
 *   "5 1/4", "5¼", "1,250.5".
 * @param decimal "," where the column or the workbook writes decimal commas.
 * @returns The number, or `undefined` where the cell is blank: a blank is not a zero. The issue
 *   `not-a-number`, `comma-is-unclear` or `cell-error` where there is none.
 */
export function numberFromCell(
  value: CellValue,
  decimal: DecimalMark = ".",
): number | undefined | Issue {
  if (typeof value === "number") return cellNumber(value) ?? notANumber(value);
  if (isBlank(value)) return undefined;
  if (isCellError(value)) return issue("cell-error", { value: quoted(value) });
  return typeof value === "string" ? numberFromText(value, decimal) : notANumber(value);
}

/** Reads a number that somebody wrote as text. Same rules and issues as `numberFromCell`. */
export function numberFromText(written: string, decimal: DecimalMark = "."): number | Issue {
  const text = written
    .replace(/[¼½¾]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/−/g, "-")
    .replace(/%/g, "")
    .trim();
  const comma = COMMA.test(text);
  if (comma && decimal !== ",") {
    const read = quoted(text.replace(",", "."));
    return issue("comma-is-unclear", { value: quoted(written), read });
  }
  return (
    cellNumber(comma ? Number(text.replace(",", ".")) : plainNumber(text)) ?? notANumber(written)
  );
}

/** NaN for a text that is no number. */
function plainNumber(text: string): number {
  if (PLAIN.test(text)) return Number(text);
  if (THOUSANDS.test(text)) return Number(text.replace(/,/g, ""));
  const [, sign, whole = 0, part, parts] = WHOLE_AND_FRACTION.exec(text) ?? [];
  const size = Number(whole) + Number(part) / Number(parts);
  return sign === "-" ? -size : size;
}

function notANumber(value: CellValue): Issue {
  return issue("not-a-number", { value: quoted(value) });
}
