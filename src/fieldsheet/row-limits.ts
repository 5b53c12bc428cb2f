import { isBlank, type CellValue } from "../measure/cell-value";
import { isIssue, type Issue } from "../measure/issue";
import { numberFromCell } from "../measure/number-from-cell";
import { Problem } from "../measure/problem";
import { exact } from "../measure/rounding";
import type { FieldRecord } from "../reading/record";
import type { SheetReading } from "../reading/sheet-reading";
import type { CheckOptions, GivenLimit } from "./check-options";
import type { Limits } from "./judged-test";

/** A test with its limits. A limit given with the check that cannot be read is kept as unreadable. */
interface LimitedTest {
  readonly record: FieldRecord;
  readonly limits: Limits;
}

/** The limit for a row, none, or why it cannot be read. */
type ReadLimit = number | Issue | undefined;

/**
 * The specification limits of each test: those given with the check, else the sheet's own low and
 * high, else its target and tolerance. Either limit may be absent.
 *
 * @returns For a record the record with its limits.
 * @throws Problem `limits-do-not-fit` when a column of limits has another length than the rows, and
 *   those of `numberFromCell` for a single limit that is not a number.
 */
export function rowLimits(
  { records, decimal }: SheetReading,
  options: CheckOptions,
): (record: FieldRecord) => LimitedTest {
  const read = (cell: CellValue): ReadLimit => {
    try {
      return numberFromCell(cell, decimal);
    } catch (problem) {
      if (problem instanceof Problem) return problem.issue;
      throw problem;
    }
  };
  const low = givenLimit("low", options.low, records.length, read);
  const high = givenLimit("high", options.high, records.length, read);
  return (record) => {
    const { values } = record;
    const { target, tolerance } = values;
    const aim = target !== undefined && tolerance !== undefined;
    const [lower, upper] = [low(record.row), high(record.row)];
    return {
      record: withIssues(record, lower, upper),
      limits: {
        low: numeric(lower) ?? values.low ?? (aim ? exact(target - tolerance) : undefined),
        high: numeric(upper) ?? values.high ?? (aim ? exact(target + tolerance) : undefined),
      },
    };
  };
}

function numeric(limit: ReadLimit): number | undefined {
  return typeof limit === "number" ? limit : undefined;
}

function givenLimit(
  place: string,
  given: GivenLimit,
  rows: number,
  read: (cell: CellValue) => ReadLimit,
): (row: number) => ReadLimit {
  if (given === undefined || typeof given === "number") return () => given;
  if (given.every(isBlank)) return () => undefined;
  if (given.length === 1) {
    const limit = read(given[0]!);
    if (isIssue(limit)) throw new Problem(limit.id, limit.values, false, place);
    return () => limit;
  }
  if (given.length !== rows) {
    throw new Problem("limits-do-not-fit", { given: given.length, rows }, false, place);
  }
  return (row) => read(given[row]!);
}

function withIssues(record: FieldRecord, low: ReadLimit, high: ReadLimit): FieldRecord {
  if (!isIssue(low) && !isIssue(high)) return record;
  const unreadable = {
    ...record.unreadable,
    ...(isIssue(low) && { low }),
    ...(isIssue(high) && { high }),
  };
  return { ...record, unreadable };
}
