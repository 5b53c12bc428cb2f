import { Problem } from "../../measure/problem";
import { grown, sidesCut, type Side } from "../area-around";
import type { CellArea, CellPlace, ReadArea, ReadScope } from "../sheet-host";
import { askPosition, positionOf } from "./position";

/** What is to be read. */
export interface Located {
  readonly area: CellArea;
  /** Rows right below it that are known and not read: those of the totals of a table. */
  readonly totals: number;
  /** Of a selection, the sides at which it cuts through filled cells. */
  readonly cut?: readonly Side[] | undefined;
}

/**
 * Finds what is to be read.
 *
 * @param scope The selection, or the table around the active cell.
 * @param around The cell whose table is meant, instead of the active one.
 * @throws Problem `selection-empty`; Excel throws `InvalidSelection` for a selection in several parts,
 *   a chart or a picture.
 */
export function locate(
  context: Excel.RequestContext,
  scope: ReadScope,
  around?: CellPlace,
): Promise<Located> {
  return scope === "selection" ? locateSelection(context) : locateTable(context, around);
}

/**
 * Finds again what was read before, as far as it goes now: a spreadsheet table; else the area with the
 * filled cells around its corners, but not at sides where it was cut off on purpose.
 */
export async function locateAgain(
  context: Excel.RequestContext,
  { area: before, cut }: ReadArea,
): Promise<Located> {
  const sheet = context.workbook.worksheets.getItem(before.sheetId);
  sheet.load("id,name");
  const { row, column, rows, columns } = before;
  const range = sheet.getRangeByIndexes(row, column, rows, columns);
  const tables = askTables(range);
  const corners = [
    range.getCell(0, 0),
    range.getCell(0, columns - 1),
    range.getCell(rows - 1, 0),
    range.getCell(rows - 1, columns - 1),
  ].map(askRegion);
  await context.sync();
  const area = { ...before, sheetName: sheet.name };
  const [table] = tables.items;
  if (!table) return { area: grown(area, corners.map(positionOf), cut ?? []), totals: 0, cut };
  const now = await locateExcelTable(context, sheet, table);
  return cut ? { area: grown(area, [now.area], cut), totals: now.totals, cut } : now;
}

/** The filled cells around a cell. */
function askRegion(cell: Excel.Range): Excel.Range {
  const region = cell.getSurroundingRegion();
  askPosition(region);
  return region;
}

/** The selection. Whole columns and rows are cut to the cells in use. */
async function locateSelection(context: Excel.RequestContext): Promise<Located> {
  const sheet = askSheet(context);
  const selection = context.workbook.getSelectedRange();
  const used = selection.getUsedRangeOrNullObject(true);
  selection.load("isEntireColumn,isEntireRow");
  askPosition(selection);
  askPosition(used);
  const corners = [selection.getCell(0, 0), selection.getLastCell()].map(askRegion);
  await context.sync();
  if (used.isNullObject) throw new Problem("selection-empty");
  const whole = selection.isEntireColumn || selection.isEntireRow;
  const area = whole ? areaOf(sheet, used) : withoutBlankEnd(areaOf(sheet, selection), used);
  return { area, totals: 0, cut: sidesCut(area, corners.map(positionOf)) };
}

/** A selection that was drawn down to the end of the sheet is read only as far as it is filled. */
function withoutBlankEnd(area: CellArea, used: Excel.Range): CellArea {
  return { ...area, rows: used.rowIndex + used.rowCount - area.row };
}

/** The Excel table that the cell stands in, without its row of totals, or the filled block. */
async function locateTable(
  context: Excel.RequestContext,
  around: CellPlace | undefined,
): Promise<Located> {
  const sheet = askSheet(context, around?.sheetId);
  const cell = around
    ? sheet.getRangeByIndexes(around.row, around.column, 1, 1)
    : context.workbook.getActiveCell();
  const tables = askTables(cell);
  const block = cell.getSurroundingRegion();
  const filled = block.getUsedRangeOrNullObject(true);
  filled.load("rowCount");
  askPosition(block);
  await context.sync();
  const [table] = tables.items;
  if (table) return locateExcelTable(context, sheet, table);
  if (filled.isNullObject) throw new Problem("selection-empty");
  return { area: areaOf(sheet, block), totals: 0 };
}

async function locateExcelTable(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  table: Excel.Table,
): Promise<Located> {
  const range = table.getRange();
  askPosition(range);
  await context.sync();
  const area = areaOf(sheet, range);
  return table.showTotals
    ? { area: { ...area, rows: area.rows - 1 }, totals: 1 }
    : { area, totals: 0 };
}

/** The sheet with the id, else that in front, which is the one of the selection and the active cell. */
function askSheet(context: Excel.RequestContext, id?: string): Excel.Worksheet {
  const { worksheets } = context.workbook;
  const sheet = id === undefined ? worksheets.getActiveWorksheet() : worksheets.getItem(id);
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
