import { shownValue, type CellValue } from "../../measure/cell-value";

/** A text that begins so is run as a formula by spreadsheet programs that open the file. */
const LIKE_A_FORMULA = /^\s*[=+\-@\t\r]/;
/** Programs take a file with this mark for UTF-8. */
const BYTE_ORDER_MARK = "\ufeff";

/**
 * Rows as the text of a CSV file (RFC 4180). A text that a spreadsheet program would take for a formula gets
 * an apostrophe before it, as people type it to keep a text a text; numbers stay numbers.
 */
export function csvOf(rows: readonly (readonly CellValue[])[]): string {
  const lines = rows.map((row) => row.map(written).join(","));
  return `${BYTE_ORDER_MARK}${lines.join("\r\n")}\r\n`;
}

function written(value: CellValue): string {
  if (typeof value === "number") return String(value);
  const text = shownValue(value);
  const safe = LIKE_A_FORMULA.test(text) ? `'${text}` : text;
  const isBare = !/[",\r\n]|^\s|\s$/.test(safe);
  return isBare ? safe : `"${safe.replaceAll('"', '""')}"`;
}
