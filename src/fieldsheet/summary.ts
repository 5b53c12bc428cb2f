import { marginToLimits } from "../acceptance/margin";
import { exact } from "../measure/rounding";
import type { AlcoholAmount, AlcoholUnit } from "../methods/volumetric-air/alcohol-correction";
import type { CheckResult } from "./check-result";
import type { TestResult } from "./test-result";

/** The tests of one mix, day, technician … together. */
export interface Summary {
  readonly of: string;
  readonly tests: number;
  readonly void: number;
  readonly incomplete: number;
  /** Of the valid tests, %; absent where there is none. */
  readonly mean?: number;
  /** Standard deviation, %; absent where there are fewer than two. */
  readonly deviation?: number;
  readonly least?: number;
  readonly most?: number;
  readonly outside: number;
  readonly onTheLimit: number;
  /** Median amount of alcohol, in the unit that most of the amounts have; absent where none is recorded. */
  readonly alcohol?: AlcoholAmount;
}

/**
 * Sums up the tests of a check by what they have in common. Void and incomplete tests are counted and
 * take no part in mean, deviation and range.
 *
 * @param groupOf What a test belongs to; "" for none.
 * @returns A line for each group, in the order in which they first appear.
 */
export function summaries(result: CheckResult, groupOf: (row: number) => string): Summary[] {
  const groups = new Map<string, TestResult[]>();
  for (const row of result.results) {
    if (row.state === "") continue;
    const of = groupOf(row.record);
    const group = groups.get(of);
    if (group) group.push(row);
    else groups.set(of, [row]);
  }
  return [...groups].map(([of, rows]) => summaryOf(of, rows));
}

function summaryOf(of: string, rows: readonly TestResult[]): Summary {
  const count = (test: TestResult["state"]) => rows.filter((row) => row.state === test).length;
  const airs = rows.flatMap(({ air }) => (air === undefined ? [] : [air]));
  const outside = rows.filter(({ specification }) => specification && specification !== "within");
  return {
    of,
    tests: rows.length,
    void: count("void"),
    incomplete: count("incomplete"),
    ...spreadOf(airs),
    outside: outside.length,
    onTheLimit: rows.filter(isOnALimit).length,
    alcohol: medianAlcohol(rows),
  };
}

function spreadOf(airs: readonly number[]): Partial<Summary> {
  if (airs.length === 0) return {};
  const mean = airs.reduce((sum, air) => sum + air, 0) / airs.length;
  const squares = airs.reduce((sum, air) => sum + (air - mean) ** 2, 0);
  const least = airs.reduce((one, other) => Math.min(one, other));
  const most = airs.reduce((one, other) => Math.max(one, other));
  const deviation = airs.length > 1 ? Math.sqrt(squares / (airs.length - 1)) : undefined;
  return { mean, deviation, least, most };
}

function isOnALimit({ air, limits }: TestResult): boolean {
  return air !== undefined && marginToLimits(air, limits) === 0;
}

/** Only amounts of one unit are compared: the litres of the correction table are no conversions. */
function medianAlcohol(rows: readonly TestResult[]): AlcoholAmount | undefined {
  const byUnit = new Map<AlcoholUnit, number[]>();
  for (const { values } of rows) {
    const { alcohol } = values;
    if (alcohol) byUnit.set(alcohol.unit, [...(byUnit.get(alcohol.unit) ?? []), alcohol.amount]);
  }
  const [most] = [...byUnit].sort(([, a], [, b]) => b.length - a.length);
  if (!most) return undefined;
  const [unit, amounts] = most;
  const inOrder = [...amounts].sort((a, b) => a - b);
  const middle = Math.floor(inOrder.length / 2);
  const amount =
    inOrder.length % 2 === 1
      ? inOrder[middle]!
      : exact((inOrder[middle - 1]! + inOrder[middle]!) / 2);
  return { amount, unit };
}
