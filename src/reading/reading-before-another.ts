import { SURE } from "./candidates";
import type { Considered } from "./considered";

/**
 * A reading of no number before the one that confirms it is the first: "Reading", "Reading after rolling
 * again". One that calls itself the final one is left as it is.
 */
export function readingBeforeAnother(columns: readonly Considered[]): readonly Considered[] {
  const isSure = ({ candidates: [best] }: Considered, field: string) =>
    best?.field === field && best.score >= SURE && best.fit >= 0;
  const second = columns.findIndex((column) => isSure(column, "second"));
  if (second < 0) return columns;
  if (columns.some(({ candidates }) => candidates.some(({ field }) => field === "first"))) {
    return columns;
  }
  const plain = columns.filter((column) => isSure(column, "final"));
  const [only] = plain;
  if (!only || plain.length > 1 || columns.indexOf(only) > second) return columns;
  const saysLast = [only.told.own, ...only.told.titles].some(({ words }) =>
    words.some(({ terms }) => terms.some((term) => term === "final" || term === "settle")),
  );
  if (saysLast) return columns;
  return columns.map((column) => {
    if (column !== only) return column;
    const [best, ...others] = column.candidates;
    return { ...column, candidates: [{ ...best!, field: "first" as const }, ...others] };
  });
}
