import type { CellPlace } from "../sheet-host";
import { inExcel } from "./in-excel";

/** Selects a cell and shows it. */
export function selectCell({ sheetId, row, column }: CellPlace): Promise<void> {
  return inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId);
    sheet.activate();
    sheet.getRangeByIndexes(row, column, 1, 1).select();
    await context.sync();
  });
}
