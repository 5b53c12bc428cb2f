import type { BlockPlace } from "../reading/block-place";
import type { SheetReading } from "../reading/sheet-reading";
import type { TestersWord } from "../reading/testers-word";

/**
 * The cell in which somebody wrote of a test, where it is that of no field and stands in the test's own row;
 * a form has no such row.
 */
export function placeOfWord(
  record: number,
  { column }: TestersWord,
  { placeOf, forms }: SheetReading,
): BlockPlace | undefined {
  if (column === undefined || forms !== undefined) return undefined;
  return { row: placeOf(record, null).row, column };
}
