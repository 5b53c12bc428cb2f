import type { CellValue } from "../measure/cell-value";
import { Problem } from "../measure/problem";
import { headingPlaces, readReview } from "./read-review";
import { HEADING_IDS, HEADINGS, type ReviewEntry } from "./review-entry";

/** A line before it stands on the sheet. */
export type NewEntry = Omit<ReviewEntry, "line">;

/**
 * The cells to add to a review below all that stands on its sheet: with the headings where it is new, and
 * below the columns of the headings where it is there. Cells of other columns stay blank.
 *
 * @param now What stands on the sheet.
 * @throws Problem `review-sheet-not-ours`; then nothing may be written to it.
 */
export function linesToAdd(
  entries: readonly NewEntry[],
  now: readonly (readonly CellValue[])[] = [],
): CellValue[][] {
  const review = readReview(now);
  if (review instanceof Problem) throw review;
  const headed = now.flatMap((row) => headingPlaces(row) ?? []).at(-1);
  const places = headed ?? Object.fromEntries(HEADING_IDS.map((id, i) => [id, i] as const));
  const width = 1 + Math.max(...HEADING_IDS.map((id) => places[id]!));
  const line = (texts: Readonly<Record<string, string>>) => {
    const cells = Array<CellValue>(width).fill(null);
    for (const id of HEADING_IDS) cells[places[id]!] = texts[id] || null;
    return cells;
  };
  const lines = entries.map((entry) => line({ ...entry }));
  return headed ? lines : [line(HEADINGS), ...lines];
}

/** Without what is the last word on its finding already, so that a second click writes nothing twice. */
export function notYetWritten(
  entries: readonly NewEntry[],
  written: readonly ReviewEntry[],
): NewEntry[] {
  const last = new Map<string, string>();
  const about = ({ sheet, sample, place, rule, column, value, figures }: NewEntry) =>
    [sheet, sample, place, rule, column, value, figures].join("\n");
  const says = ({ decision, reason, oldValue, newValue, initials }: NewEntry) =>
    [decision, reason, oldValue, newValue, initials].join("\n");
  for (const entry of written) last.set(about(entry), says(entry));
  return entries.filter((entry) => last.get(about(entry)) !== says(entry));
}
