import type { ICellData, Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/preset-sheets-core";
import type { CellValue } from "../../measure/cell-value";
import { contentOf } from "./cell-content";
import type { Rectangle } from "./filled-block";
import type { Sheet } from "./workbook";

/** What stands in a sheet, the results that formulas spill into other cells included. */
export class SheetCells {
  private readonly own;
  private readonly spilled: Readonly<Record<number, Record<number, Nullable<ICellData>>>>;

  constructor(sheet: Sheet) {
    this.own = sheet.getSheet().getCellMatrix();
    const spills = sheet.getInject().get(FormulaDataModel).getArrayFormulaCellData();
    this.spilled = (spills[sheet.getWorkbook().getUnitId()]?.[sheet.getSheetId()] ??
      {}) as typeof this.spilled;
  }

  at(row: number, column: number): CellValue {
    const own = contentOf(this.own.getValue(row, column));
    return own === null || own === "" ? contentOf(this.spilled[row]?.[column]) : own;
  }

  isFilled(row: number, column: number): boolean {
    const content = this.at(row, column);
    return content !== null && content !== "";
  }

  /** The smallest rectangle from the first cell on that holds everything; none on an empty sheet. */
  used(): Rectangle {
    // Cells that only have a format are there as well, so the edges are drawn in to what is filled.
    let { endRow: bottom, endColumn: right } = this.own.getDataRange();
    for (const [row, cells] of Object.entries(this.spilled))
      for (const column of Object.keys(cells)) {
        bottom = Math.max(bottom, Number(row));
        right = Math.max(right, Number(column));
      }
    const any = (last: number, filled: (at: number) => boolean) => {
      for (let at = 0; at <= last; at += 1) if (filled(at)) return true;
      return false;
    };
    while (bottom >= 0 && !any(right, (column) => this.isFilled(bottom, column))) bottom -= 1;
    if (bottom < 0) return { top: 0, left: 0, bottom: -1, right: -1 };
    while (right >= 0 && !any(bottom, (row) => this.isFilled(row, right))) right -= 1;
    return { top: 0, left: 0, bottom, right };
  }
}
