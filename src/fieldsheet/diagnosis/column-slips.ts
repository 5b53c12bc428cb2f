import { exact } from "../../measure/rounding";
import type { columnSlipMessages } from "../../messages/english/column-slips";
import type { TestResult } from "../test-result";
import { SLIPS } from "./diagnose";
import type { Slip, SlipId } from "./slip";
import { wrongResultOf, type WrongResult } from "./wrong-result";

/** A slip that a whole column of results makes. */
export interface ColumnSlip {
  readonly say: keyof typeof columnSlipMessages;
  /** How many rows could show it: there it changes the number. */
  readonly of: number;
  /** Positions of the rows that do. */
  readonly rows: readonly number[];
}

/** Slips that a formula can make, with their sentences: a formula does not swap digits. */
const BY_FORMULA: Readonly<Partial<Record<SlipId, ColumnSlip["say"]>>> = {
  "correction-forgotten": "column-correction-forgotten",
  "correction-added": "column-correction-added",
  "aggregate-factor-subtracted": "column-factor-subtracted",
  "cups-forgotten": "column-cups-forgotten",
  "cups-counted-twice": "column-cups-counted-twice",
  "cups-subtracted": "column-cups-subtracted",
  "first-reading-used": "column-first-reading-used",
  "readings-averaged": "column-readings-averaged",
  "rounded-to-other-step": "column-rounded-otherwise",
};

/** Fewer rows than these are slips of their own (our own limit). */
const LEAST_ROWS = 4;

/** So many of the rows that could show it do, so that it is the column's and not the day's (our own limit). */
const LEAST_SHARE = 0.8;

/**
 * Slips that a column of results makes nearly wherever they change a number, as a template with a
 * wrong formula does. What a whole column does in one way needs no second cause.
 */
export function columnSlips(tests: readonly TestResult[]): readonly ColumnSlip[] {
  if (tests.filter(isWronglyReported).length < LEAST_ROWS) return [];
  const results = tests.flatMap((test): Reported[] => {
    const result = test.air === undefined ? undefined : wrongResultOf(test);
    return result ? [{ record: test.record, result, right: test.air! }] : [];
  });
  const wrong = results.filter(({ result, right }) => differs(result.reported, right));
  const found = SLIPS.flatMap((slip) => {
    const say = BY_FORMULA[slip.id];
    if (!say) return [];
    return [...waysOf(slip, wrong)]
      .filter(([, rows]) => rows.length >= LEAST_ROWS)
      .map(([way, rows]): ColumnSlip => ({ say, of: couldShow(slip, way, results), rows }))
      .filter(({ rows, of }) => rows.length >= LEAST_SHARE * of);
  });
  return withoutSecondCauses(found);
}

function isWronglyReported({ air, values }: TestResult): boolean {
  return air !== undefined && values.air !== undefined && differs(values.air, air);
}

/** A test with a reported result. */
interface Reported {
  readonly record: number;
  readonly result: WrongResult;
  /** What the record gives, %. */
  readonly right: number;
}

/**
 * The rows that a slip explains, by the way in which it does: a formula does it the same way in every
 * row, rounds to tenths, say, and not now to tenths and now to halves.
 */
function waysOf({ gives }: Slip, wrong: readonly Reported[]): ReadonlyMap<number, number[]> {
  const ways = new Map<number, number[]>();
  for (const { record, result } of wrong) {
    gives(result).forEach(({ air }, way) => {
      if (differs(air, result.reported)) return;
      const rows = ways.get(way);
      if (rows) rows.push(record);
      else ways.set(way, [record]);
    });
  }
  return ways;
}

/** In how many rows a slip made in one way would change the number. */
function couldShow({ gives }: Slip, way: number, results: readonly Reported[]): number {
  return results.filter(({ result, right }) => {
    const air = gives(result)[way]?.air;
    return air !== undefined && differs(air, right);
  }).length;
}

/** The slip that explains the most rows first; what it explains, no other does. */
function withoutSecondCauses(slips: readonly ColumnSlip[]): readonly ColumnSlip[] {
  const explained = new Set<number>();
  const first: ColumnSlip[] = [];
  for (const slip of [...slips].sort((a, b) => b.rows.length - a.rows.length)) {
    const rows = slip.rows.filter((row) => !explained.has(row));
    if (rows.length < LEAST_ROWS) continue;
    for (const row of rows) explained.add(row);
    first.push({ ...slip, rows });
  }
  return first;
}

function differs(one: number, other: number): boolean {
  return exact(one - other) !== 0;
}
