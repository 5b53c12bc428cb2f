import { isBlank, type CellValue } from "../measure/cell-value";
import { numberFromCell } from "../measure/number-from-cell";
import { Problem } from "../measure/problem";
import { exact } from "../measure/rounding";
import type { Limits } from "./judged-row";
import type { FieldRecord } from "./record";
import type { CheckOptions, GivenLimit } from "./sheet-table";

/**
 * The specification limits of each row: those given with the check, else the sheet's own low and
 * high columns, else its target and tolerance. Either limit may be absent.
 *
 * @throws Problem `limits-do-not-fit` when a column of limits has another length than the rows, and
 *   those of `numberFromCell` for a limit given with the check that is not a number.
 */
export function rowLimits(records: readonly FieldRecord[], options: CheckOptions): Limits[] {
  const low = givenLimit("low", options.low, records.length);
  const high = givenLimit("high", options.high, records.length);
  return records.map(({ values }, i) => {
    const { target, tolerance } = values;
    const aim = target !== undefined && tolerance !== undefined ? { target, tolerance } : undefined;
    return {
      low: low(i) ?? values.low ?? (aim && exact(aim.target - aim.tolerance)),
      high: high(i) ?? values.high ?? (aim && exact(aim.target + aim.tolerance)),
    };
  });
}

function givenLimit(
  where: string,
  given: GivenLimit,
  rows: number,
): (row: number) => number | undefined {
  if (given === undefined || typeof given === "number") return () => given;
  if (given.length === 1) return () => limitFrom(where, given[0]!);
  if (given.every(isBlank)) return () => undefined;
  if (given.length !== rows) {
    throw new Problem("limits-do-not-fit", { where, given: given.length, rows });
  }
  return (row) => limitFrom(where, given[row]!);
}

function limitFrom(where: string, cell: CellValue): number | undefined {
  try {
    return numberFromCell(cell);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    throw new Problem(problem.id, { where, ...problem.values });
  }
}
