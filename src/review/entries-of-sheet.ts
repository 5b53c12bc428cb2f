import type { ReviewEntry } from "./review-entry";

/**
 * The lines of a review about a sheet, also those from when it had another name, as far as somebody has
 * written down that it was renamed.
 */
export function entriesOfSheet(entries: readonly ReviewEntry[], sheet: string): ReviewEntry[] {
  const named = namesNow(entries);
  return entries.filter(
    (entry) => entry.decision !== "renamed" && folded(named(entry)) === folded(sheet),
  );
}

/** The sheets of decisions, by the names that they have now, that are not among those that there are. */
export function sheetsNotThere(
  entries: readonly ReviewEntry[],
  there: readonly string[],
): string[] {
  const known = new Set(there.map(folded));
  const named = namesNow(entries);
  const names = entries.filter(({ decision }) => decision !== "renamed").map(named);
  const missing = names.filter((name) => !known.has(folded(name)));
  return [...new Map(missing.map((name) => [folded(name), name])).values()];
}

/** Follows the name under which a line was written through every later renaming. */
function namesNow(entries: readonly ReviewEntry[]): (entry: ReviewEntry) => string {
  const renamings = entries
    .filter(({ decision }) => decision === "renamed")
    .sort((a, b) => (a.time < b.time ? -1 : a.time > b.time ? 1 : a.line - b.line));
  return ({ sheet, time }) =>
    renamings.reduce(
      (name, renaming) =>
        renaming.time >= time && folded(renaming.oldValue) === folded(name) ? renaming.sheet : name,
      sheet,
    );
}

/** Excel holds "Day 1" and "day 1" to be one name. */
function folded(name: string): string {
  return name.trim().toLowerCase();
}
