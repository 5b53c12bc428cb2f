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
    let bottom = -1;
    let right = -1;
    const reach = (row: number, column: number) => {
      if (!this.isFilled(row, column)) return;
      bottom = Math.max(bottom, row);
      right = Math.max(right, column);
    };
    this.own.forValue(reach);
    for (const [row, cells] of Object.entries(this.spilled))
      for (const column of Object.keys(cells)) reach(Number(row), Number(column));
    return { top: 0, left: 0, bottom, right };
  }
}
