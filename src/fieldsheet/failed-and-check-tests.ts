import type { TestResult } from "./test-result";
import type { NextTest } from "./same-sample";

/** A result outside its limits and the check test that was made of it, if any. */
export interface CheckedFailure {
  readonly first: TestResult;
  readonly check?: TestResult;
  /** Whether the load was rejected, or adjusted and tested again, so that no check test is due. */
  readonly settled: boolean;
}

/** How people write that a load was not placed. */
const NOT_PLACED =
  /\b(?:reject|refus|return|dump|wast|turn(?:ed)? (?:away|back)|sent (?:away|back))/i;

/** Every valid result outside its limits, each with the next valid test of the same sample; in pieces. */
export function* checkedFailures(
  tests: readonly TestResult[],
  nextOfSample: () => Generator<undefined, NextTest>,
): Generator<undefined, readonly CheckedFailure[]> {
  const outside = tests.filter(isOutside);
  if (outside.length === 0) return [];
  const next = yield* nextOfSample();
  const checks = new Set<TestResult>();
  return outside.flatMap((first): CheckedFailure[] => {
    // A check test that fails as well is the end: it asks for no check of its own.
    if (checks.has(first)) return [];
    const settled = NOT_PLACED.test(first.values.loadDecision ?? "");
    let check = next.get(first);
    while (check && check.state !== "valid") check = next.get(check);
    // A test after an adjustment is of other concrete: a first result again, and no check test.
    if (check?.values.adjusted) return [{ first, settled: true }];
    if (check) checks.add(check);
    return [{ first, check, settled }];
  });
}

/** Whether a valid result lies outside its limits. */
export function isOutside({ specification }: TestResult): boolean {
  return specification !== undefined && specification !== "within";
}
