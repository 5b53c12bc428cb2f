import { isBlank } from "../measure/cell-value";
import { isIssue, type Issue } from "../measure/issue";
import { numberFromCell, type DecimalMark } from "../measure/number-from-cell";
import { Problem } from "../measure/problem";
import { exact } from "../measure/rounding";
import type { FieldRecord, FieldValues, Unreadable } from "../reading/record";
import type { SheetReading } from "../reading/sheet-reading";
import type { CheckOptions, GivenLimit } from "./check-options";
import type { Limits } from "./judged-test";

/** The limits of each test, and the given ones that cannot be read, by the position of the test. */
interface RowLimits {
  readonly of: (record: FieldRecord) => Limits;
  readonly unreadable: ReadonlyMap<number, Unreadable>;
}

/** The limit for a row, none, or why it cannot be read. */
type ReadLimit = number | Issue | undefined;

/**
 * The specification limits of each test: those given with the check, else the sheet's own low and
 * high, else its target and tolerance. Each may be written in one cell. Either limit may be absent.
 *
 * @throws Problem `limits-do-not-fit` when a column of limits has another length than the rows, and
 *   those of `numberFromCell` for a single limit that is not a number.
 */
export function rowLimits({ records, decimal }: SheetReading, options: CheckOptions): RowLimits {
  const low = givenLimit("low", options.low, records.length, decimal);
  const high = givenLimit("high", options.high, records.length, decimal);
  const unreadable = new Map<number, Unreadable>();
  for (const [field, limit] of [["low", low] as const, ["high", high] as const]) {
    if (!Array.isArray(limit)) continue;
    limit.forEach((each, row) => {
      if (isIssue(each)) unreadable.set(row, { ...unreadable.get(row), [field]: each });
    });
  }
  // Most tests have the limits of the one before; they share one object.
  let last: Limits = {};
  return {
    unreadable,
    of({ row, values }) {
      const own = limitsIn(values);
      const limits = {
        low: limitAt(low, row) ?? own.low,
        high: limitAt(high, row) ?? own.high,
      };
      if (limits.low !== last.low || limits.high !== last.high) last = limits;
      return last;
    },
  };
}

/**
 * The limits that a row holds: in its columns of a low and a high one, each of which may hold a whole
 * specification such as "4.5 to 7.5", else in its target, with the tolerance where it names none.
 */
function limitsIn({ low, high, target, tolerance }: FieldValues): Limits {
  const aim = tolerance && target?.aim;
  return {
    low:
      low?.low ??
      low?.aim ??
      high?.low ??
      target?.low ??
      (aim === undefined ? undefined : exact(aim - tolerance!.below)),
    high:
      high?.high ??
      high?.aim ??
      low?.high ??
      target?.high ??
      (aim === undefined ? undefined : exact(aim + tolerance!.above)),
  };
}

function limitAt(
  limit: number | readonly ReadLimit[] | undefined,
  row: number,
): number | undefined {
  const own = typeof limit === "object" ? limit[row] : limit;
  return typeof own === "number" ? own : undefined;
}

function givenLimit(
  place: string,
  given: GivenLimit,
  rows: number,
  decimal: DecimalMark,
): number | readonly ReadLimit[] | undefined {
  if (given === undefined || typeof given === "number") return given;
  if (given.every(isBlank)) return undefined;
  const limits = given.map((cell): ReadLimit => numberFromCell(cell, decimal));
  if (limits.length === 1) {
    const [limit] = limits;
    if (isIssue(limit)) throw new Problem(limit.id, limit.values, false, place);
    return limit;
  }
  if (limits.length !== rows) {
    throw new Problem("limits-do-not-fit", { given: limits.length, rows }, false, place);
  }
  return limits;
}
