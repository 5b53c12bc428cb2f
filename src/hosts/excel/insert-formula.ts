import { Problem } from "../../measure/problem";
import { blockAddress } from "../cell-address";
import { inExcel } from "./in-excel";

/**
 * Puts a formula into the selected cell, if that is empty. What stands there is read once more in the request
 * that writes: where somebody was quicker, it is put back.
 *
 * @param formula As Excel has it in English, which it shows to everybody in their own way.
 * @returns The address of the cell.
 * @throws Problem `cell-is-filled`.
 */
export function insertFormula(formula: string): Promise<string> {
  return inExcel(async (context) => {
    const active = context.workbook.getActiveCell();
    active.load("rowIndex,columnIndex,formulas,values");
    const front = context.workbook.worksheets.getActiveWorksheet();
    front.load("id");
    await context.sync();
    const { rowIndex: row, columnIndex: column } = active;
    const cell = blockAddress({ row, column, rows: 1, columns: 1 });
    if (isFilled(active)) throw new Problem("cell-is-filled", { cell });
    const sheet = context.workbook.worksheets.getItem(front.id);
    const before = sheet.getRangeByIndexes(row, column, 1, 1);
    before.load("formulas,values");
    const target = sheet.getRangeByIndexes(row, column, 1, 1);
    target.formulas = [[formula]];
    await context.sync();
    if (isFilled(before)) {
      target.formulas = before.formulas;
      await context.sync();
      throw new Problem("cell-is-filled", { cell });
    }
    return cell;
  });
}

/** A cell into which another formula spreads has a value and no formula. */
function isFilled({ formulas, values }: Excel.Range): boolean {
  return formulas[0]![0] !== "" || values[0]![0] !== "";
}
