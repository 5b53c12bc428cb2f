import { checkedFailures, type CheckedFailure } from "./failed-and-check-tests";
import { nextTestOfSample, type NextTest } from "./same-sample";
import type { DecidedTest } from "./judged-test";

/** The tests of a sheet together. What is looked up across them is worked out once, when asked for. */
export class SheetTests {
  #next?: NextTest;
  #failures?: readonly CheckedFailure[];

  constructor(readonly all: readonly DecidedTest[]) {}

  /** The next test of the same sample, for each test that has one. */
  get nextOfSample(): NextTest {
    return (this.#next ??= nextTestOfSample(this.all));
  }

  /** The results outside their limits, each with its check test. */
  get failures(): readonly CheckedFailure[] {
    return (this.#failures ??= checkedFailures(this.all, () => this.nextOfSample));
  }

  /** Whether any record holds a test. */
  get any(): boolean {
    return this.all.some(({ blank }) => !blank);
  }
}
