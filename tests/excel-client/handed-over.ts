import { columnsOf, rowsOf, type Rectangle } from "./block";
import type { EmulatedExcel } from "./emulated-excel";
import { heldAt, type SheetModel } from "./sheet-model";

/**
 * Cells as Excel hands them over to a custom function: a table of values, in which a blank is null, or 0
 * in an Excel that makes zeros of blanks.
 */
export function handedOver(excel: EmulatedExcel, sheet: SheetModel, block: Rectangle): unknown[][] {
  return Array.from({ length: rowsOf(block) }, (_, row) =>
    Array.from({ length: columnsOf(block) }, (_, column) => {
      const held = heldAt(sheet, block.top + row, block.left + column);
      if (held !== "") return held;
      return excel.blanksAsZero ? 0 : null;
    }),
  );
}
