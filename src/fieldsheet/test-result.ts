import type { Verdict } from "../acceptance/limits";
import type { Finding } from "./finding";
import type { DecidedTest } from "./judged-test";

/** What a check says about one test, with the steps that led to it. */
export interface TestResult extends DecidedTest {
  /** What the test is known by: its sample, else its load; "" when it has neither. */
  readonly sample: string;
  /** Air content, %; absent unless the test is valid. */
  readonly air?: number;
  /** Against the specification; absent without limits or air. */
  readonly specification?: Verdict;
  /** What was found in this test, and what was found of the sheet as a whole that changes it. */
  readonly findings: readonly Finding[];
}
