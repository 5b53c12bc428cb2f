import { entriesOfSheet } from "../../../review/entries-of-sheet";
import { reviewedFindings, type ReviewedFindings } from "../../../review/reviewed-findings";
import type { CheckedArea } from "../checked-area";
import { findingsOnSheet } from "./finding-on-sheet";
import { NO_REVIEW, type ReviewOnSheet } from "./review-on-sheet";

/** The findings of a check with what has been decided of them, and how many there are of each kind. */
export interface ReviewOfCheck extends ReviewedFindings {
  readonly counts: Readonly<Record<"open" | "accepted" | "corrected", number>>;
}

/** The kinds of decisions, as they are counted and filtered. */
export const DECIDED_AS = ["open", "accepted", "corrected"] as const;
export type DecidedAs = (typeof DECIDED_AS)[number];

let last: { checked: CheckedArea; review: ReviewOnSheet; made: ReviewOfCheck } | undefined;

/**
 * The one way from findings to findings with decisions: whatever lists, counts, prints or writes findings
 * asks here what was decided of each.
 *
 * @param review What the workbook holds; nothing is decided without one.
 */
export function reviewOf(checked: CheckedArea, review: ReviewOnSheet = NO_REVIEW): ReviewOfCheck {
  if (last?.checked === checked && last.review === review) return last.made;
  const entries = entriesOfSheet(review.entries, checked.read.area.sheetName);
  const reviewed = reviewedFindings(findingsOnSheet(checked, entries), entries);
  const { accepted, corrected } = reviewed;
  const open = checked.result.findings.length - accepted;
  const made = { ...reviewed, counts: { open, accepted, corrected: corrected.length } };
  last = { checked, review, made };
  return made;
}
