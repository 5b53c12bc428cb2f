import type { FieldValues } from "../reading/record";
import type { TestResult } from "./test-result";

/** What people put behind a sample's id for a further test of it: "S-10C", "S-10 repeat", "S-10b2". */
const FURTHER_TEST = /^(.*\d)[\s_/-]*(?:r|rep|repeat|retest|re-test|c|chk|check|[a-d])\d?$/;

/** Few enough to take some thousandths of a second. */
export const TESTS_IN_A_PIECE = 2000;

/** The next test of the same sample, for each test that has one. */
export type NextTest = ReadonlyMap<TestResult, TestResult>;

/** Most ids end in a number and are no further test; the ends of ids are quick to look at. */
const MAY_BE_FURTHER = /[a-z]\d?$/;

/**
 * Finds for each test the next one of the same sample.
 *
 * Tests belong to one sample when their ids say so (the same id, or one with an addition such as
 * "S-10C"), when a row says of which test it is the repeat or the check, or when the very next test
 * is of the same load. Ids that return on another day are other samples.
 *
 * @param tests All tests in the order of the sheet.
 * @returns The next test for each one that has a next; in pieces, `undefined` between them.
 */
export function* nextTestOfSample(tests: readonly TestResult[]): Generator<undefined, NextTest> {
  const next = new Map<TestResult, TestResult>();
  const lastOfSample = new Map<string, TestResult>();
  let before: TestResult | undefined;
  for (const test of tests) {
    if (test.record % TESTS_IN_A_PIECE === 0) yield undefined;
    if (test.blank) continue;
    const { sample, repeatOf, checkOf, date } = test.values;
    const names = new Set<string>();
    for (const id of [sample, repeatOf, checkOf])
      if (id !== undefined) names.add(date === undefined ? plainId(id) : `${date} ${plainId(id)}`);
    for (const name of names) {
      const earlier = lastOfSample.get(name);
      if (earlier && !next.has(earlier)) next.set(earlier, test);
      lastOfSample.set(name, test);
    }
    if (before && !next.has(before) && isOfSameLoad(before.values, test.values))
      next.set(before, test);
    before = test;
  }
  return next;
}

function plainId(id: string): string {
  const written = id.toLowerCase();
  return MAY_BE_FURTHER.test(written) ? (FURTHER_TEST.exec(written)?.[1] ?? written) : written;
}

function isOfSameLoad(one: FieldValues, other: FieldValues): boolean {
  return one.load !== undefined && one.load === other.load && one.date === other.date;
}
