import type { JudgedTest } from "./judged-test";

/** The readings that were taken after rolling, in order; a final one that is only written down again is left out. */
export function readingsTaken({ values: { first, second, third, final } }: JudgedTest): number[] {
  const taken = [first, second, third].filter((reading) => reading !== undefined);
  return taken.length > 0 || final === undefined ? taken : [final];
}
