import { cellErrorIssue } from "./cell-error-issue";
import { cellNumber, isBlank, isCellError, quoted, type CellValue } from "./cell-value";
import { issue, type Issue } from "./issue";

/** How decimals are written in the column or the workbook. */
export type DecimalMark = "." | ",";

const WHOLE_AND_FRACTION = /^([+-]?)(?:(\d+)[ -]+)?(\d+)\s*\/\s*(\d+)$/;
const PLAIN = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;
const THOUSANDS_BY_SPACE = /^-?\d{1,3}(?:\s\d{3})+(?:[.,]\d+)?(?:\s?%)?$/;
const THOUSANDS = /^[+-]?[1-9]\d{0,2}(,\d{3})+\.\d+$/;
/** A comma that no thousands can follow: 6,25 and 0,125, while 1,250 may be either. */
const DECIMAL_COMMA = /^[+-]?(?:\d*,\d{1,2}|0?,\d+|\d+,\d{4,})$/;
const COMMA = /^[+-]?\d*,\d+$/;
/** In a column with decimal commas: "1.250" may be either, "1.250,5" and "1.250.000" may not. */
const POINT = /^[+-]?[1-9]\d{0,2}\.\d{3}$/;
const THOUSANDS_BY_POINT = /^[+-]?[1-9]\d{0,2}(?:(?:\.\d{3})+,\d+|(?:\.\d{3}){2,})$/;
const EITHER =
  /^([+-]?\d[\d.,]*(?: \d+\/\d+)?)\s*(?:\/|-|–|to|or|and|o|a|y|ou|à|et|oder|bis|und)\s*(\d[\d.,]*(?: \d+\/\d+)?)$/;
const VULGAR: Readonly<Record<string, string>> = { "¼": "1/4", "½": "1/2", "¾": "3/4" };

/**
 * Reads the number in a cell.
 *
 * @param value Cell value. Text is read where it can be read only one way: "5.25", "5.25 %",
 *   "5 1/4", "5¼", "5,25", "1,250.5".
 * @param decimal "," where the column or the workbook writes decimal commas.
 * @returns The number, or `undefined` where the cell is blank: a blank is not a zero. The issue
 *   `not-a-number`, `two-ways`, `comma-is-unclear`, `point-is-unclear` or `cell-error` where there is none.
 */
export function numberFromCell(
  value: CellValue,
  decimal: DecimalMark = ".",
): number | undefined | Issue {
  if (typeof value === "number") return cellNumber(value) ?? notANumber(value);
  if (isBlank(value)) return undefined;
  if (isCellError(value)) return cellErrorIssue(value);
  return typeof value === "string" ? numberFromText(value, decimal) : notANumber(value);
}

/** Reads a number that somebody wrote as text. Same rules and issues as `numberFromCell`. */
export function numberFromText(written: string, decimal: DecimalMark = "."): number | Issue {
  const text = withoutSpaces(written)
    .replace(/[¼½¾]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/−/g, "-")
    .replace(/%/g, "")
    .trim();
  const comma = COMMA.test(text);
  if (comma && decimal !== "," && !DECIMAL_COMMA.test(text)) {
    const read = quoted(text.replace(",", "."));
    return issue("comma-is-unclear", { value: quoted(written), read });
  }
  if (decimal === "," && POINT.test(text)) {
    const [whole, read] = [quoted(text.replace(".", "")), quoted(text.replace(".", ","))];
    return issue("point-is-unclear", { value: quoted(written), whole, read });
  }
  if (decimal === "," && THOUSANDS_BY_POINT.test(text))
    return cellNumber(Number(text.replaceAll(".", "").replace(",", "."))) ?? notANumber(written);
  const number = cellNumber(comma ? Number(text.replace(",", ".")) : plainNumber(text));
  return number ?? oneOfTwo(text, written) ?? notANumber(written);
}

/** "2 271": thousands set off by a space, as the SI has them. */
function withoutSpaces(written: string): string {
  return THOUSANDS_BY_SPACE.test(written.trim()) ? written.replace(/\s/g, "") : written;
}

/** What is wrong with two numbers in one cell, such as "2-3" and "5.75 / 6". */
function oneOfTwo(text: string, written: string): Issue | undefined {
  const found = WHOLE_AND_FRACTION.test(text) ? null : EITHER.exec(text);
  if (!found) return undefined;
  const [one, other] = [found[1]!, found[2]!];
  if (one === other) return undefined;
  return issue("two-ways", { value: quoted(written), one: quoted(one), other: quoted(other) });
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
