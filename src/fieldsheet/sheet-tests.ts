import { checkedFailures, type CheckedFailure } from "./failed-and-check-tests";
import { nextTestOfSample, type NextTest } from "./same-sample";
import type { TestResult } from "./test-result";

/**
 * The tests of a sheet together. What is looked up across them is worked out once, when first asked for,
 * in pieces, so that the page can be used meanwhile.
 */
export class SheetTests {
  private next?: NextTest;
  private failed?: readonly CheckedFailure[];

  /**
   * @param all The tests in the order of the sheet. What the method made of one (`result`, `readings` …) is
   *   worked out anew for whoever asks: ask of all tests for `state`, `air` and `values`.
   */
  constructor(readonly all: readonly TestResult[]) {}

  /** The next test of the same sample, for each test that has one. */
  *nextOfSample(): Generator<undefined, NextTest> {
    return (this.next ??= yield* nextTestOfSample(this.all));
  }

  /** The results outside their limits, each with its check test. */
  *failures(): Generator<undefined, readonly CheckedFailure[]> {
    return (this.failed ??= yield* checkedFailures(this.all, () => this.nextOfSample()));
  }

  /** Whether any record holds a test. */
  get any(): boolean {
    return this.all.some(({ blank }) => !blank);
  }
}
