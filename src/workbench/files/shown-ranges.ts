import type { IRange } from "@univerjs/core";
import { blocksOf } from "../../files/workbook/cell-reference";

/** How many rows and columns the spreadsheet has. */
export interface SheetSize {
  readonly rows: number;
  readonly columns: number;
}

/** The ranges of a rule as the spreadsheet takes them, without what lies beyond its last cells. */
export function shownRanges(references: string, { rows, columns }: SheetSize): IRange[] {
  return blocksOf(references)
    .filter(({ top, left }) => top < rows && left < columns)
    .map(({ top, left, bottom, right }) => ({
      startRow: top,
      startColumn: left,
      endRow: Math.min(bottom, rows - 1),
      endColumn: Math.min(right, columns - 1),
    }));
}
