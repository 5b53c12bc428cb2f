import { isBlank, type CellValue } from "../measure/cell-value";
import { numberFromCell } from "../measure/number-from-cell";
import { Problem } from "../measure/problem";
import { exact } from "../measure/rounding";
import type { CheckOptions, GivenLimit } from "./check-options";
import type { Limits } from "./judged-row";
import type { FieldRecord } from "./record";

/** A row with its limits. A limit given with the check that cannot be read is kept as unreadable. */
interface LimitedRow {
  readonly record: FieldRecord;
  readonly limits: Limits;
}

/** A limit for one row, and what is wrong with it if it cannot be read. */
interface ReadLimit {
  readonly limit?: number;
  readonly problem?: Problem;
}

/**
 * The specification limits of each row: those given with the check, else the sheet's own low and
 * high columns, else its target and tolerance. Either limit may be absent.
 *
 * @throws Problem `limits-do-not-fit` when a column of limits has another length than the rows, and
 *   those of `numberFromCell` for a single limit that is not a number.
 */
export function rowLimits(records: readonly FieldRecord[], options: CheckOptions): LimitedRow[] {
  const low = givenLimit("low", options.low, records.length);
  const high = givenLimit("high", options.high, records.length);
  return records.map((record, i) => {
    const { values } = record;
    const [lower, upper] = [low(i), high(i)];
    const { target, tolerance } = values;
    const aim = target !== undefined && tolerance !== undefined ? { target, tolerance } : undefined;
    return {
      record: withProblems(record, { low: lower.problem, high: upper.problem }),
      limits: {
        low: lower.limit ?? values.low ?? (aim && exact(aim.target - aim.tolerance)),
        high: upper.limit ?? values.high ?? (aim && exact(aim.target + aim.tolerance)),
      },
    };
  });
}

function givenLimit(where: string, given: GivenLimit, rows: number): (row: number) => ReadLimit {
  if (given === undefined || typeof given === "number") return () => ({ limit: given });
  if (given.every(isBlank)) return () => ({});
  if (given.length === 1) {
    const { limit, problem } = readLimit(given[0]!);
    if (problem) throw new Problem(problem.id, { where, ...problem.values });
    return () => ({ limit });
  }
  if (given.length !== rows) {
    throw new Problem("limits-do-not-fit", { where, given: given.length, rows });
  }
  return (row) => readLimit(given[row]!);
}

function readLimit(cell: CellValue): ReadLimit {
  try {
    return { limit: numberFromCell(cell) };
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return { problem };
  }
}

function withProblems(
  record: FieldRecord,
  { low, high }: { low?: Problem; high?: Problem },
): FieldRecord {
  if (!low && !high) return record;
  const unreadable = { ...record.unreadable, ...(low && { low }), ...(high && { high }) };
  return { ...record, unreadable };
}
