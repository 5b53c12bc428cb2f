import { Problem } from "../../measure/problem";
import type { CellArea, ReadScope } from "../sheet-host";
import { askPosition, positionOf } from "./position";

/**
 * Finds what is to be read.
 *
 * @param scope The selection, or the table around the active cell.
 * @throws Problem `selection-empty`; Excel throws `InvalidSelection` for a selection in several parts,
 *   a chart or a picture.
 */
export function locate(context: Excel.RequestContext, scope: ReadScope): Promise<CellArea> {
  return scope === "selection" ? locateSelection(context) : locateTable(context);
}

/** The selection. Whole columns and rows are cut to the cells in use. */
async function locateSelection(context: Excel.RequestContext): Promise<CellArea> {
  const sheet = askSheet(context);
  const selection = context.workbook.getSelectedRange();
  const used = selection.getUsedRangeOrNullObject(true);
  selection.load("isEntireColumn,isEntireRow");
  askPosition(selection);
  askPosition(used);
  await context.sync();
  if (used.isNullObject) throw new Problem("selection-empty");
  const whole = selection.isEntireColumn || selection.isEntireRow;
  return whole ? areaOf(sheet, used) : withoutBlankEnd(areaOf(sheet, selection), used);
}

/** A selection that was drawn down to the end of the sheet is read only as far as it is filled. */
function withoutBlankEnd(area: CellArea, used: Excel.Range): CellArea {
  return { ...area, rows: used.rowIndex + used.rowCount - area.row };
}

/** The Excel table that the active cell stands in, without its row of totals, or the filled block. */
async function locateTable(context: Excel.RequestContext): Promise<CellArea> {
  const sheet = askSheet(context);
  const cell = context.workbook.getActiveCell();
  const tables = askTables(cell);
  const block = cell.getSurroundingRegion();
  const filled = block.getUsedRangeOrNullObject(true);
  filled.load("rowCount");
  askPosition(block);
  await context.sync();
  const [table] = tables.items;
  if (table) return locateExcelTable(context, sheet, table);
  if (filled.isNullObject) throw new Problem("selection-empty");
  return areaOf(sheet, block);
}

async function locateExcelTable(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  table: Excel.Table,
): Promise<CellArea> {
  const range = table.getRange();
  askPosition(range);
  await context.sync();
  const area = areaOf(sheet, range);
  return table.showTotals ? { ...area, rows: area.rows - 1 } : area;
}

/** The sheet in front, which is the one of the selection and the active cell. */
function askSheet(context: Excel.RequestContext): Excel.Worksheet {
  const sheet = context.workbook.worksheets.getActiveWorksheet();
  sheet.load("id,name");
  return sheet;
}

function askTables(cell: Excel.Range): Excel.TableScopedCollection {
  const tables = cell.getTables(false);
  tables.load("items/showTotals");
  return tables;
}

function areaOf(sheet: Excel.Worksheet, range: Excel.Range): CellArea {
  return { sheetId: sheet.id, sheetName: sheet.name, ...positionOf(range) };
}
