import type { FieldValues } from "../reading/record";
import type { DecidedTest } from "./judged-test";

/** What people put behind a sample's id for a further test of it: "S-10C", "S-10 repeat", "S-10b2". */
const FURTHER_TEST = /^(.*\d)[\s_/-]*(?:r|rep|repeat|retest|re-test|c|chk|check|[a-d])\d?$/;

/** The next test of the same sample, for each test that has one. */
export type NextTest = ReadonlyMap<DecidedTest, DecidedTest>;

/**
 * Finds for each test the next one of the same sample.
 *
 * Tests belong to one sample when their ids say so (the same id, or one with an addition such as
 * "S-10C"), when a row says of which test it is the repeat or the check, or when the very next test
 * is of the same load. Ids that return on another day are other samples.
 *
 * @param rows All rows in the order of the sheet.
 * @returns The next test for each one that has a next.
 */
export function nextTestOfSample(rows: readonly DecidedTest[]): NextTest {
  const next = new Map<DecidedTest, DecidedTest>();
  const lastOfSample = new Map<string, DecidedTest>();
  let before: DecidedTest | undefined;
  for (const row of rows) {
    if (row.blank) continue;
    const names = sampleNames(row.values);
    const earlier = names.map((name) => lastOfSample.get(name));
    if (before && isOfSameLoad(before.values, row.values)) earlier.push(before);
    for (const test of earlier) if (test && !next.has(test)) next.set(test, row);
    for (const name of names) lastOfSample.set(name, row);
    before = row;
  }
  return next;
}

function sampleNames({ sample, repeatOf, checkOf, date }: FieldValues): string[] {
  const ids = [sample, repeatOf, checkOf].filter((id) => id !== undefined);
  return [...new Set(ids.map((id) => `${date ?? ""} ${plainId(id)}`))];
}

function plainId(id: string): string {
  const written = id.toLowerCase();
  return FURTHER_TEST.exec(written)?.[1] ?? written;
}

function isOfSameLoad(one: FieldValues, other: FieldValues): boolean {
  return one.load !== undefined && one.load === other.load && one.date === other.date;
}
