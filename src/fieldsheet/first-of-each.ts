import type { DecidedTest } from "./judged-test";

/**
 * The first test of each thing found, for what is one cause however many tests rest on it: a bowl, a
 * cup.
 *
 * @param find What is found in a test; `undefined` where nothing is.
 */
export function firstOfEach<T extends string | number>(
  tests: readonly DecidedTest[],
  find: (test: DecidedTest) => T | undefined,
): { readonly record: number; readonly found: T }[] {
  const first = new Map<T, number>();
  for (const test of tests) {
    const found = find(test);
    if (found !== undefined && !first.has(found)) first.set(found, test.record);
  }
  return [...first].map(([found, record]) => ({ record, found }));
}
