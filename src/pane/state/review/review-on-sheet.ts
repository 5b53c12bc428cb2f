import type { ReadArea, SheetHost } from "../../../hosts/sheet-host";
import { Problem } from "../../../measure/problem";
import { sheetsNotThere, entriesOfSheet } from "../../../review/entries-of-sheet";
import { readReview } from "../../../review/read-review";
import { REVIEW_SHEET, type ReviewEntry } from "../../../review/review-entry";

/** What the pane knows of the review in the workbook. */
export interface ReviewOnSheet {
  /** Whether the workbook has the sheet. */
  readonly there: boolean;
  readonly entries: readonly ReviewEntry[];
  /** Lines that were not taken, or why the sheet as a whole was not. */
  readonly problems: readonly Problem[];
  /** Sheets with decisions that are not in the workbook, by name; the checked one may have been called so. */
  readonly otherSheets: readonly { readonly name: string; readonly count: number }[];
}

export const NO_REVIEW: ReviewOnSheet = {
  there: false,
  entries: [],
  problems: [],
  otherSheets: [],
};

/**
 * Reads the review that the workbook holds. What goes wrong is in what it gives: a check goes on without.
 *
 * @param checked The name of the checked sheet.
 */
export async function reviewIn(host: SheetHost, checked: string): Promise<ReviewOnSheet> {
  try {
    const read = await host.readSheet(REVIEW_SHEET);
    return read ? await reviewFrom(read, host, checked) : NO_REVIEW;
  } catch (error) {
    // Whether there is a review is not known then.
    if (error instanceof Problem) return { ...NO_REVIEW, problems: [error] };
    throw error;
  }
}

/** The review that stands in what was read. */
export async function reviewFrom(
  read: ReadArea,
  host: SheetHost,
  checked: string,
): Promise<ReviewOnSheet> {
  const review = readReview(read.values, read.area.row + 1);
  if (review instanceof Problem) return { ...NO_REVIEW, there: true, problems: [review] };
  const { entries, notTaken } = review;
  const known = { there: true, entries, problems: notTaken, otherSheets: [] };
  // Sheets are asked for only where there is one to look for.
  const elsewhere = sheetsNotThere(entries, [checked]);
  if (elsewhere.length === 0) return known;
  const names = (await host.sheetTops(1)).map(({ area }) => area.sheetName);
  const otherSheets = sheetsNotThere(entries, [checked, ...names]).map((name) => ({
    name,
    count: entriesOfSheet(entries, name).length,
  }));
  return { ...known, otherSheets };
}
