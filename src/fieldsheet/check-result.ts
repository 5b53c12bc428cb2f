import type { Verdict } from "../acceptance/limits";
import type { Columns } from "../reading/column-place";
import type { SheetReading } from "../reading/sheet-reading";
import type { DecidedTest, TestState } from "./judged-test";
import type { NotLookedAt } from "./not-looked-at";
import type { Finding } from "./rule";
import type { SheetTests } from "./sheet-tests";

/** What a check says about one test. */
export interface TestResult {
  /** Position of the test in the reading, from 0. */
  readonly record: number;
  /** What the test is known by: its sample, else its load; "" when it has neither. */
  readonly sample: string;
  readonly test: TestState;
  /** Air content, %; absent unless the test is valid. */
  readonly air?: number;
  /** Against the specification; absent without limits or air. */
  readonly specification?: Verdict;
  /** What was found in this test, and what was found of the sheet as a whole that changes it. */
  readonly findings: readonly Finding[];
  /** The test as read and judged, for whoever wants to show the steps. */
  readonly judged: DecidedTest;
}

/** What a check says about the tests of a sheet. */
export interface CheckResult {
  readonly reading: SheetReading;
  /** The fields that were found; those of the reading. */
  readonly columns: Columns;
  readonly results: readonly TestResult[];
  /** The tests behind the rows, with what is looked up across them. */
  readonly tests: SheetTests;
  /** Every finding once: those of the sheet as a whole first, then test by test. */
  readonly findings: readonly Finding[];
  /** What was not looked at, because the sheet does not record it. */
  readonly notLookedAt: readonly NotLookedAt[];
}
