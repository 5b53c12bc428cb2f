import { cellValueFrom } from "../../measure/cell-value";
import { areaAddress } from "../cell-address";
import type { ReadArea } from "../sheet-host";
import { inExcel } from "./in-excel";
import { askPosition, positionOf } from "./position";

/** Columns of a sheet that are looked at: more are no table of tests. */
const MOST_COLUMNS = 200;

const NOTHING = { row: 0, column: 0, rows: 0, columns: 0 };

/** Reads the first rows in use of every sheet that can be seen, that in front first. */
export function readSheetTops(rows: number): Promise<readonly ReadArea[]> {
  return inExcel(async (context) => {
    const { worksheets } = context.workbook;
    const front = worksheets.getActiveWorksheet();
    front.load("id");
    worksheets.load("items/id,items/name,items/visibility");
    await context.sync();
    const seen = worksheets.items
      .filter(({ visibility }) => visibility === Excel.SheetVisibility.visible)
      .map((sheet) => ({ sheet, used: sheet.getRange().getUsedRangeOrNullObject(true) }));
    for (const { used } of seen) askPosition(used);
    await context.sync();
    const tops = seen.map(({ sheet, used }) => {
      const { id, name } = sheet;
      if (used.isNullObject) return { area: { sheetId: id, sheetName: name, ...NOTHING } };
      const block = positionOf(used);
      const size = {
        rows: Math.min(rows, block.rows),
        columns: Math.min(MOST_COLUMNS, block.columns),
      };
      const range = sheet.getRangeByIndexes(block.row, block.column, size.rows, size.columns);
      range.load("values");
      return { area: { sheetId: id, sheetName: name, ...block, ...size }, range };
    });
    await context.sync();
    return tops
      .map(({ area, range }) => ({
        area,
        address: areaAddress(area),
        values: ((range?.values ?? []) as unknown[][]).map((line) => line.map(cellValueFrom)),
      }))
      .sort((a, b) => Number(b.area.sheetId === front.id) - Number(a.area.sheetId === front.id));
  });
}
