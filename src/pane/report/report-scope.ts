import type { CheckResult } from "../../fieldsheet/check-result";
import type { TestResult } from "../../fieldsheet/test-result";

/** Of which tests a report is: all that were checked, one, or those of a day or a week. */
export type ReportScope =
  | { readonly kind: "all" }
  | { readonly kind: "test"; readonly record: number }
  | { readonly kind: "day"; readonly day: number }
  | { readonly kind: "week"; readonly monday: number };

/** The tests of a report. */
export interface TestsInScope {
  readonly tests: readonly TestResult[];
  /** Tests without a date that can be read, which belong to no day and to no week. */
  readonly undated: number;
  /** Tests of the sheet that are not in the report. */
  readonly others: number;
}

const DAYS_IN_A_WEEK = 7;
/** A Monday, as spreadsheets count days: 2 January 1900 by their count of that year. */
const SOME_MONDAY = 2;

/** The tests that a report is of; blank rows are no tests. */
export function testsInScope({ results }: CheckResult, scope: ReportScope): TestsInScope {
  const all = results.filter(({ state }) => state !== "");
  const tests = all.filter((test) => isIn(test, scope));
  const dated = scope.kind === "day" || scope.kind === "week";
  const undated = dated ? all.filter((test) => dayOf(test) === undefined).length : 0;
  return { tests, undated, others: all.length - tests.length };
}

/** The days on which tests were made, in their order. */
export function daysOf({ results }: CheckResult): readonly number[] {
  const days = results.map((test) => (test.state === "" ? undefined : dayOf(test)));
  return [...new Set(days.filter((day) => day !== undefined))].sort((a, b) => a - b);
}

/** The Mondays of the weeks in which tests were made, in their order. */
export function weeksOf(result: CheckResult): readonly number[] {
  return [...new Set(daysOf(result).map(mondayBefore))];
}

function isIn(test: TestResult, scope: ReportScope): boolean {
  if (scope.kind === "all") return true;
  if (scope.kind === "test") return test.record === scope.record;
  const day = dayOf(test);
  if (day === undefined) return false;
  return scope.kind === "day" ? day === scope.day : mondayBefore(day) === scope.monday;
}

function dayOf({ values }: TestResult): number | undefined {
  const { date } = values;
  return date === undefined ? undefined : Math.floor(date);
}

function mondayBefore(day: number): number {
  return day - ((day - SOME_MONDAY) % DAYS_IN_A_WEEK);
}
