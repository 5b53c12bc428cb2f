import { firstSpelling } from "../measure/first-spelling";
import { isIssue } from "../measure/issue";
import { individualsLimits, type ChartLimits } from "./control-chart/individuals-limits";
import { brokenRunRules, type RunRule } from "./control-chart/run-rules";
import { verdictOn, type SpecLimits, type Verdict } from "./limits";

/** A test on its way into a trend. */
export interface TrendTest {
  /** Position among the tests, from 0, so that a point leads back to its cell. */
  readonly record: number;
  /** What a reader knows the test by: sample or load; "" when it has neither. */
  readonly name: string;
  /** Only a valid test with a value becomes a point. */
  readonly test: "valid" | "void" | "incomplete" | "";
  readonly value?: number;
  readonly limits: SpecLimits;
  /** The mix; absent when not known. */
  readonly mix?: string;
  /** The day, as the sheet shows it; absent when not known. */
  readonly day?: string;
}

/** By what the tests are parted before a trend is drawn. */
export type TrendGrouping = "all" | "mix" | "day" | "mix and day";

/** One point of a trend. */
export interface TrendPoint extends TrendTest {
  readonly value: number;
  /** Absent without limits of the specification. */
  readonly verdict?: Verdict;
  /** Run rules that the point breaks, the graver first. */
  readonly signals: readonly RunRule[];
}

/** Tests that are not in the trend, and why. */
export interface LeftOut {
  readonly void: number;
  readonly incomplete: number;
  readonly blank: number;
}

/** The trend of one group of tests. */
export interface Trend {
  /** Mix of the group; absent when not grouped by mix, "" for tests without one. */
  readonly mix?: string;
  /** Day of the group; absent when not grouped by day, "" for tests without one. */
  readonly day?: string;
  /** In the order of the sheet. */
  readonly points: readonly TrendPoint[];
  readonly leftOut: LeftOut;
  /** Control limits; absent with fewer than two points. */
  readonly limits?: ChartLimits;
  /** The specification where every point has the same; absent where they differ or there is none. */
  readonly specification?: SpecLimits;
}

/**
 * Individuals charts of tests: points with control limits, specification and signals, one chart for
 * each group in the order in which the groups appear. Void and incomplete tests and blank rows are
 * left out and counted.
 *
 * @param tests Tests in the order of the sheet.
 * @param grouping Mixes that differ only in capitals or spaces are one.
 */
export function trends(
  tests: readonly TrendTest[],
  grouping: TrendGrouping = "all",
): readonly Trend[] {
  const byMix = grouping === "mix" || grouping === "mix and day";
  const byDay = grouping === "day" || grouping === "mix and day";
  const nameOf = firstSpelling();
  const groups = new Map<string, { mix?: string; day?: string; tests: TrendTest[] }>();
  for (const test of tests) {
    const by = {
      ...(byMix && { mix: nameOf(test.mix) }),
      ...(byDay && { day: nameOf(test.day) }),
    };
    const key = JSON.stringify(by);
    const group = groups.get(key) ?? { ...by, tests: [] };
    group.tests.push(test);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ tests, ...by }) => ({ ...by, ...trendOf(tests) }));
}

function trendOf(tests: readonly TrendTest[]): Omit<Trend, "mix" | "day"> {
  const kept = tests.filter(isPoint);
  const values = kept.map(({ value }) => value);
  const found = individualsLimits(values);
  const limits = isIssue(found) ? undefined : found;
  const signals = limits ? brokenRunRules(values, limits) : [];
  const points = kept.map((test, i) => ({
    ...test,
    verdict: verdictOn(test.value, test.limits),
    signals: signals[i] ?? [],
  }));
  const count = (state: TrendTest["test"]) => tests.filter(({ test }) => test === state).length;
  const leftOut = {
    void: count("void"),
    incomplete: count("incomplete"),
    blank: tests.filter((test) => !isPoint(test)).length - count("void") - count("incomplete"),
  };
  return { points, leftOut, limits, specification: commonSpecification(kept) };
}

function isPoint(test: TrendTest): test is TrendTest & { value: number } {
  return test.test === "valid" && test.value !== undefined;
}

function commonSpecification(tests: readonly TrendTest[]): SpecLimits | undefined {
  const first = tests[0]?.limits;
  if (!first || (first.low === undefined && first.high === undefined)) return undefined;
  const same = tests.every(({ limits: { low, high } }) => low === first.low && high === first.high);
  return same ? { low: first.low, high: first.high } : undefined;
}
