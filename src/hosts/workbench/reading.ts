import type { FUniver } from "@univerjs/core/facade";
import { isBlank } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { areaAddress } from "../cell-address";
import type { CellArea, ReadArea, ReadScope } from "../sheet-host";
import { filledBlock, type Rectangle } from "./filled-block";
import { namedTableAround } from "./named-table";
import { SheetCells } from "./sheet-cells";
import { openWorkbook, sheetWithId, type Sheet } from "./workbook";

/** So many cells are read within a few seconds. */
const MOST_CELLS = 2_000_000;

/** Reads what is selected, or the table around the selected cell: a named one, else the filled cells. */
export function readScope(api: FUniver, scope: ReadScope): ReadArea {
  const sheet = openWorkbook(api).getActiveSheet();
  const selected = sheet.getSelection()?.getActiveRangeList() ?? [];
  if (selected.length === 0) throw new Problem("selection-empty");
  if (selected.length > 1) throw new Problem("selection-in-parts");
  const cells = new SheetCells(sheet);
  const used = cells.used();
  const { startRow, endRow, startColumn, endColumn } = selected[0]!.getRange();
  const block =
    scope === "table"
      ? tableAround(api, sheet, cells)
      : {
          // Whole rows or columns have no first or last cell of their own.
          top: startRow || 0,
          left: startColumn || 0,
          bottom: Math.min(Number.isNaN(endRow) ? Infinity : endRow, used.bottom),
          right: Math.min(Number.isNaN(endColumn) ? Infinity : endColumn, used.right),
        };
  if (!block || block.top > block.bottom || block.left > block.right)
    throw new Problem("selection-empty");
  const area = readBlock(sheet, block);
  if (area.values.every((row) => row.every(isBlank))) throw new Problem("selection-empty");
  return area;
}

/** Reads an area again; rows and columns that are gone by now are left out. */
export function readAgain(api: FUniver, area: CellArea): ReadArea {
  const sheet = sheetWithId(api, area.sheetId);
  return readBlock(sheet, {
    top: area.row,
    left: area.column,
    bottom: Math.min(area.row + area.rows, sheet.getMaxRows()) - 1,
    right: Math.min(area.column + area.columns, sheet.getMaxColumns()) - 1,
  });
}

function readBlock(sheet: Sheet, { top, left, bottom, right }: Rectangle): ReadArea {
  const rows = bottom - top + 1;
  const columns = right - left + 1;
  if (rows < 1 || columns < 1) throw new Problem("sheet-gone");
  if (rows * columns > MOST_CELLS)
    throw new Problem("selection-too-large", { rows, columns, limit: MOST_CELLS });
  const area: CellArea = {
    sheetId: sheet.getSheetId(),
    sheetName: sheet.getSheetName(),
    row: top,
    column: left,
    rows,
    columns,
  };
  const cells = new SheetCells(sheet);
  const values = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => cells.at(top + row, left + column)),
  );
  return { area, address: areaAddress(area), values };
}

function tableAround(api: FUniver, sheet: Sheet, cells: SheetCells): Rectangle | undefined {
  const selected = sheet.getActiveCell();
  if (!selected) return undefined;
  const [row, column] = [selected.getRow(), selected.getColumn()];
  return (
    namedTableAround(api, sheet, row, column) ??
    filledBlock(row, column, cells.isFilled.bind(cells), cells.used())
  );
}
