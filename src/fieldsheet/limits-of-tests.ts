import { isBlank } from "../measure/cell-value";
import { at, isIssue, issue, type Issue } from "../measure/issue";
import type { DecimalMark } from "../measure/number-from-cell";
import { percentAsShare } from "../measure/percent-as-share";
import { percentFromCell } from "../reading/air-in-percent";
import { limitsIn } from "../reading/limits-in";
import type { FieldRecord, Unreadable } from "../reading/record";
import type { SheetReading } from "../reading/sheet-reading";
import type { CheckOptions, GivenLimit } from "./check-options";
import type { Limits } from "./judged-test";

/** The limits of each test. */
export interface LimitsOfTests {
  readonly of: (test: FieldRecord) => Limits;
  /** The test with the given limits that cannot be read beside its own cells. */
  readonly withUnreadable: (test: FieldRecord) => FieldRecord;
}

/** The limit for a test, none, or why it cannot be read. */
type ReadLimit = number | Issue | undefined;

/**
 * The specification limits of each test: those given with the check, else the sheet's own low and
 * high, else its target and tolerance, else what the setup specifies for its mix. Each may be written
 * in one cell. Either limit may be absent.
 *
 * @returns The issue `limits-do-not-fit` when a column of limits has another length than the rows, and
 *   those of `numberFromCell` for a single limit that is not a number.
 */
export function limitsOfTests(
  { records, decimal, has }: SheetReading,
  options: CheckOptions,
): LimitsOfTests | Issue {
  const low = givenLimit("low", options.low, records.length, decimal);
  const high = givenLimit("high", options.high, records.length, decimal);
  if (isIssue(low)) return low;
  if (isIssue(high)) return high;
  const unreadable = new Map<number, Unreadable>();
  for (const [field, limit] of [["low", low] as const, ["high", high] as const]) {
    if (!Array.isArray(limit)) continue;
    limit.forEach((each, record) => {
      if (isIssue(each)) unreadable.set(record, { ...unreadable.get(record), [field]: each });
    });
  }
  // A column of one limit leaves the other to be given for all tests.
  const { otherwise = {} } = options;
  const alone =
    has("target") || has("low") === has("high") ? undefined : has("low") ? "high" : "low";
  const rest = alone === undefined ? undefined : { [alone]: otherwise[alone] };
  // Most tests have the limits of the one before; they share one object.
  let last: Limits = {};
  return {
    withUnreadable(test) {
      const more = unreadable.get(test.record);
      return more ? { ...test, unreadable: { ...test.unreadable, ...more } } : test;
    },
    of(test) {
      const { record } = test;
      const own = limitsIn(test.values);
      const said = {
        low: limitAt(low, record) ?? own.low ?? (own.high === undefined ? undefined : rest?.low),
        high: limitAt(high, record) ?? own.high ?? (own.low === undefined ? undefined : rest?.high),
      };
      if (said.low !== undefined && said.high !== undefined) {
        if (said.low > said.high) return { crossed: { low: said.low, high: said.high } };
      } else if (LIMIT_FIELDS.some((field) => test.unreadable[field])) {
        return { ...said, unread: true };
      }
      const none = said.low === undefined && said.high === undefined;
      const limits = none ? limitsOfMix(test, options) : said;
      if (limits.low !== last.low || limits.high !== last.high) last = limits;
      return last;
    },
  };
}

/**
 * What a setup specifies for the mix of a test, where the sheet says nothing of limits in it; else what is
 * given for such tests.
 */
function limitsOfMix(
  { values: { mix } }: FieldRecord,
  { setup, otherwise = {} }: CheckOptions,
): Limits {
  const air = mix === undefined ? undefined : setup?.specificationFor(mix)?.air;
  return air?.low === undefined && air?.high === undefined ? otherwise : air;
}

const LIMIT_FIELDS = ["low", "high", "target", "tolerance"] as const;

function limitAt(
  limit: number | readonly ReadLimit[] | undefined,
  record: number,
): number | undefined {
  const own = typeof limit === "object" ? limit[record] : limit;
  return typeof own === "number" ? own : undefined;
}

function givenLimit(
  place: string,
  given: GivenLimit,
  rows: number,
  decimal: DecimalMark,
): number | readonly ReadLimit[] | undefined | Issue {
  if (given === undefined) return undefined;
  if (typeof given === "number") return at(place, percentAsShare(given)) ?? given;
  if (given.every(isBlank)) return undefined;
  const limits = given.map((cell): ReadLimit => percentFromCell(cell, decimal));
  if (limits.length === 1) return at(place, limits[0]);
  if (limits.length === rows) return limits;
  return at(place, issue("limits-do-not-fit", { given: limits.length, rows }));
}
