import { isCellError, shownValue, type CellValue } from "../measure/cell-value";
import { recogniseColumns } from "./columns";

/**
 * Two header rows as one: "Readings" over "First", "Second" and "Third". A text in the upper row
 * also stands over the columns to its right until the next one, as merged cells do.
 *
 * @returns For each column both texts, or only the lower one where that alone is recognised.
 */
export function headersOfTwoRows(
  upper: readonly CellValue[],
  lower: readonly CellValue[],
): readonly string[] {
  let over = "";
  return lower.map((cell, i) => {
    const own = shownValue(upper[i]).trim();
    over = own || over;
    const below = shownValue(cell).trim();
    if (below === "") return own;
    const both = `${over} ${below}`.trim();
    return isRecognised(both) || !isRecognised(below) ? both : below;
  });
}

/** Whether a row may be one of two header rows: several texts, and nothing but texts. */
export function mayBeOneOfTwo(row: readonly CellValue[]): boolean {
  if (row.some((cell) => isCellError(cell) || !["string", "object"].includes(typeof cell)))
    return false;
  return row.filter((cell) => shownValue(cell).trim() !== "").length > 1;
}

function isRecognised(header: string): boolean {
  return Object.keys(recogniseColumns([header])).length > 0;
}
