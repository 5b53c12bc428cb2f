import type { Rectangle } from "../block";
import { heldAt, type SheetModel } from "../sheet-model";

/**
 * The region around a cell, bounded by blank rows and columns or the edge of the sheet: it grows as long
 * as a filled cell touches it, also at a corner.
 */
export function surroundingRegion(sheet: SheetModel, row: number, column: number): Rectangle {
  let block = { top: row, left: column, bottom: row, right: column };
  for (;;) {
    const grown = { ...block };
    const { top, left, bottom, right } = block;
    if (top > 0 && lineFilled(sheet, top - 1, top - 1, left - 1, right + 1)) grown.top -= 1;
    if (lineFilled(sheet, bottom + 1, bottom + 1, left - 1, right + 1)) grown.bottom += 1;
    if (left > 0 && lineFilled(sheet, top - 1, bottom + 1, left - 1, left - 1)) grown.left -= 1;
    if (lineFilled(sheet, top - 1, bottom + 1, right + 1, right + 1)) grown.right += 1;
    if (JSON.stringify(grown) === JSON.stringify(block)) return block;
    block = grown;
  }
}

function lineFilled(
  sheet: SheetModel,
  top: number,
  bottom: number,
  left: number,
  right: number,
): boolean {
  for (let row = Math.max(0, top); row <= Math.min(bottom, sheet.grid.length); row += 1) {
    for (let column = Math.max(0, left); column <= right; column += 1) {
      if (heldAt(sheet, row, column) !== "") return true;
    }
  }
  return false;
}
