import type { FUniver } from "@univerjs/core/facade";
import { Problem } from "../../measure/problem";
import { blockAddress } from "../cell-address";
import { SheetCells } from "./sheet-cells";
import { openWorkbook } from "./workbook";

/** Puts a formula into the selected cell, if that is empty. @throws Problem `cell-is-filled`, `selection-empty`. */
export function insertFormula(api: FUniver, formula: string): string {
  const sheet = openWorkbook(api).getActiveSheet();
  const range = sheet.getActiveCell() ?? sheet.getActiveRange();
  if (!range) throw new Problem("selection-empty");
  const [row, column] = [range.getRow(), range.getColumn()];
  const cell = blockAddress({ row, column, rows: 1, columns: 1 });
  const target = sheet.getRange(row, column);
  if (new SheetCells(sheet).isFilled(row, column) || target.getFormula())
    throw new Problem("cell-is-filled", { cell });
  target.setValue({ f: formula });
  return cell;
}
