import { compareWithLimits } from "../acceptance/limits";
import type { DecidedTest } from "./judged-test";
import type { NextTest } from "./same-sample";

/** A result outside its limits and the check test that was made of it, if any. */
export interface CheckedFailure {
  readonly first: DecidedTest;
  readonly check?: DecidedTest;
  /** Whether the load was rejected, or adjusted and tested again, so that no check test is due. */
  readonly settled: boolean;
}

/** How people write that a load was not placed. */
const NOT_PLACED =
  /\b(?:reject|refus|return|dump|wast|turn(?:ed)? (?:away|back)|sent (?:away|back))/i;

/**
 * Every valid result outside its limits, each with the next valid test of the same sample.
 *
 * @param nextOfSample Gives the next test of the same sample for each; asked only where one is needed.
 */
export function checkedFailures(
  tests: readonly DecidedTest[],
  nextOfSample: () => NextTest,
): readonly CheckedFailure[] {
  const outside = tests.filter(isOutside);
  if (outside.length === 0) return [];
  const next = nextOfSample();
  const checks = new Set<DecidedTest>();
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

/** Whether a valid result lies outside the limits. */
export function isOutside({ state, result, limits: { low, high } }: DecidedTest): boolean {
  if (state !== "valid" || !result) return false;
  return compareWithLimits(result.air, low, high) !== "within";
}
