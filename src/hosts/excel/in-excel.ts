import { Problem } from "../../measure/problem";
import { excelCan } from "./abilities";
import { CalledOff } from "./called-off";
import { problemFromExcel } from "./excel-errors";

/**
 * Does something in Excel. While a cell is being edited, Excel waits with it; what one command does is
 * one step of Undo, where Excel can.
 *
 * @throws Problem with a sentence of ours for whatever goes wrong; what a caller threw to call the work
 *   off is passed on.
 */
export async function inExcel<T>(job: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  if (!excelCan("readingAndMarking")) throw new Problem("excel-too-old");
  try {
    const options = { delayForCellEdit: true, mergeUndoGroup: excelCan("undoGroups") };
    return await Excel.run(options, job);
  } catch (error) {
    throw error instanceof CalledOff ? error.thrown : problemFromExcel(error);
  }
}
