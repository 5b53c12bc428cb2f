import type { DecidedTest } from "./judged-test";

/**
 * The first row of each thing found, for what is one cause however many tests rest on it: a bowl, a
 * cup.
 *
 * @param find What is found in a row; `undefined` where nothing is.
 */
export function firstOfEach<T extends string | number>(
  rows: readonly DecidedTest[],
  find: (row: DecidedTest) => T | undefined,
): { readonly row: number; readonly found: T }[] {
  const first = new Map<T, number>();
  for (const row of rows) {
    const found = find(row);
    if (found !== undefined && !first.has(found)) first.set(found, row.row);
  }
  return [...first].map(([found, row]) => ({ row, found }));
}
