import type { Rectangle } from "../block";
import { heldAt, type SheetModel } from "../sheet-model";

/**
 * The region around a cell, bounded by blank rows and columns or the edge of the sheet: it grows as long
 * as a filled cell touches it, also at a corner.
 */
export function surroundingRegion(sheet: SheetModel, row: number, column: number): Rectangle {
  let [top, left, bottom, right] = [row, column, row, column];
  for (;;) {
    // Down and up first, as far as it goes: long tables grow by rows.
    while (lineFilled(sheet, bottom + 1, bottom + 1, left - 1, right + 1)) bottom += 1;
    while (top > 0 && lineFilled(sheet, top - 1, top - 1, left - 1, right + 1)) top -= 1;
    const toLeft = left > 0 && lineFilled(sheet, top - 1, bottom + 1, left - 1, left - 1);
    const toRight = lineFilled(sheet, top - 1, bottom + 1, right + 1, right + 1);
    if (!toLeft && !toRight) return { top, left, bottom, right };
    if (toLeft) left -= 1;
    if (toRight) right += 1;
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
