import { Problem } from "../../measure/problem";
import { excelCan } from "./abilities";
import { problemFromExcel } from "./excel-errors";

/** Work that its caller has called off; it is passed on as it is. */
function isCalledOff(error: unknown): boolean {
  return error instanceof Error && error.name === "AbortError";
}

/**
 * Does something in Excel. While a cell is being edited, Excel waits with it; what one command does is
 * one step of Undo, where Excel can.
 *
 * @throws Problem with a sentence of ours for whatever Excel throws.
 */
export async function inExcel<T>(job: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  if (!excelCan("readingAndMarking")) throw new Problem("excel-too-old");
  try {
    return await Excel.run({ delayForCellEdit: true, mergeUndoGroup: excelCan("undoGroups") }, job);
  } catch (error) {
    throw isCalledOff(error) ? error : problemFromExcel(error);
  }
}
