import { cellValueFrom, type CellValue } from "../../measure/cell-value";
import type { CellArea, CellPlace } from "../sheet-host";
import { inExcel } from "./in-excel";

/** Selects a cell, shows it, and reads some cells in the same request. */
export function selectCell(
  { sheetId, row, column }: CellPlace,
  along?: CellArea,
): Promise<readonly (readonly CellValue[])[]> {
  return inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId);
    sheet.activate();
    sheet.getRangeByIndexes(row, column, 1, 1).select();
    const range =
      along && sheet.getRangeByIndexes(along.row, along.column, along.rows, along.columns);
    range?.load("values");
    await context.sync();
    const values = (range?.values ?? []) as unknown[][];
    return values.map((cells) => cells.map(cellValueFrom));
  });
}
