import { Problem } from "../../measure/problem";
import { excelCan } from "./abilities";
import { CalledOff } from "./called-off";
import { problemFromExcel } from "./excel-errors";

type Job<T> = (context: Excel.RequestContext) => Promise<T>;

/** So often something that can be done over again is begun before it is given up. */
const MOST_ATTEMPTS = 3;

/**
 * Does something in Excel. While a cell is being edited, Excel waits with it.
 *
 * @throws Problem with a sentence of ours for whatever goes wrong; what a caller threw to call the work
 *   off is passed on.
 */
export async function inExcel<T>(job: Job<T>): Promise<T> {
  try {
    return await run(job, false);
  } catch (error) {
    throw error instanceof CalledOff ? error.thrown : problemFromExcel(error);
  }
}

/**
 * Does something in Excel that looks anew each time it is begun, as one step of Undo where Excel can.
 *
 * Excels are reported that have undo groups and fail with one, at once or now and then; and somebody may
 * have taken away, between two looks, what was to be changed. So whatever goes wrong, it is begun again,
 * then without an undo group.
 *
 * @throws Problem as `inExcel`; a problem that the job itself throws is passed on at once.
 */
export async function asOneStep<T>(job: Job<T>): Promise<T> {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await run(job, attempt === 1 && excelCan("undoGroups"));
    } catch (error) {
      const giveUp = error instanceof Problem || attempt === MOST_ATTEMPTS;
      if (giveUp) throw problemFromExcel(error);
    }
  }
}

function run<T>(job: Job<T>, mergeUndoGroup: boolean): Promise<T> {
  if (!excelCan("readingAndMarking")) throw new Problem("excel-too-old");
  const delayForCellEdit = true;
  return Excel.run(
    mergeUndoGroup ? { delayForCellEdit, mergeUndoGroup } : { delayForCellEdit },
    job,
  );
}
