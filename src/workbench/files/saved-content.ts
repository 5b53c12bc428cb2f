import { FormulaDataModel } from "@univerjs/preset-sheets-core";
import type { CellContent } from "../../files/workbook/cell-content";
import { contentOf } from "../../hosts/workbench/cell-content";
import { SheetCells } from "../../hosts/workbench/sheet-cells";
import type { Sheet } from "../../hosts/workbench/workbook";

/** What a file gets for a cell of the spreadsheet: a formula with its result, or a plain value. */
export function savedContent(sheet: Sheet, row: number, column: number): CellContent {
  const cell = sheet.getSheet().getCellMatrix().getValue(row, column);
  const value = contentOf(cell);
  const formula = cell?.f || (cell?.si ? sheet.getRange(row, column).getFormula() : "");
  if (!formula) return value;
  const over = reachOf(sheet, row, column);
  return { formula, result: value, ...(over && { over }) };
}

/** How far the results of a formula reach, where they fill more cells than its own. */
function reachOf(sheet: Sheet, row: number, column: number) {
  const ranges = sheet.getInject().get(FormulaDataModel).getArrayFormulaRange();
  const range = ranges[sheet.getWorkbook().getUnitId()]?.[sheet.getSheetId()]?.[row]?.[column];
  if (!range) return undefined;
  const { startRow, endRow, startColumn, endColumn } = range;
  const reach = { rows: endRow - startRow + 1, columns: endColumn - startColumn + 1 };
  return reach.rows * reach.columns > 1 ? reach : undefined;
}

/** The same of every cell in use, the parts of results included that formulas spill into others. */
export function savedRows(sheet: Sheet): CellContent[][] {
  const cells = new SheetCells(sheet);
  let { bottom, right } = cells.used();
  // A formula may show nothing and is saved all the same.
  sheet
    .getSheet()
    .getCellMatrix()
    .forValue((row, column, cell) => {
      if (!cell?.f && !cell?.si) return;
      bottom = Math.max(bottom, row);
      right = Math.max(right, column);
    });
  return Array.from({ length: bottom + 1 }, (_, row) =>
    Array.from({ length: right + 1 }, (_, column) => {
      const own = savedContent(sheet, row, column);
      return own === null || own === "" ? cells.at(row, column) : own;
    }),
  );
}

/** Whether two contents are one and the same; of a formula its result does not count. */
export function isSameContent(one: CellContent, other: CellContent): boolean {
  const compared = (content: CellContent) =>
    content === "" || content === null
      ? null
      : typeof content === "object" && "formula" in content
        ? content.formula
        : content;
  return JSON.stringify(compared(one)) === JSON.stringify(compared(other));
}
