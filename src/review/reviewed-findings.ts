import type { Finding } from "../fieldsheet/finding";
import type { ReviewEntry, Subject } from "./review-entry";

/** A finding with what it is known by on its sheet. */
export interface FindingOnSheet {
  readonly finding: Finding;
  readonly subject: Subject;
  /** Whether its sample names one test of the sheet only, so that it is known wherever it stands. */
  readonly alone: boolean;
}

/** What has been decided of a finding. */
export interface FindingDecided {
  readonly decision: "open" | "accepted";
  /** The last word on it, if there is one. */
  readonly entry?: ReviewEntry;
  /** Of an open one, the acceptance that does not hold any more because what it rested on has changed. */
  readonly reopened?: ReviewEntry;
}

/** The review of a sheet. */
export interface ReviewedFindings {
  /** What was decided of a finding; one of which nothing stands in the review is open. */
  of(finding: Finding): FindingDecided;
  /** How many of them are accepted; all others are open. */
  readonly accepted: number;
  /** Findings that were there, were corrected, and are not there any more. */
  readonly corrected: readonly ReviewEntry[];
  /** Last words on findings of this sheet that are not there any more, other than corrections. */
  readonly gone: readonly ReviewEntry[];
}

const OPEN: FindingDecided = { decision: "open" };

/**
 * Puts the decisions of a review to the findings of a sheet. A decision holds for a finding of the same
 * sample, rule, column and value, said with the same numbers; of a sample that names several tests, or
 * none, also of the same place. A later decision holds before an earlier one.
 *
 * @param found The findings, in any order; those of which nothing stands in the review may be left out.
 * @param entries The lines about this sheet, in the order of the review.
 */
export function reviewedFindings(
  found: readonly FindingOnSheet[],
  entries: readonly ReviewEntry[],
): ReviewedFindings {
  const inTime = [...entries].sort((a, b) => compared(a.time, b.time) || a.line - b.line);
  const byMatter = grouped(inTime, matterOf);
  const decided = new Map<Finding, FindingDecided>();
  const met = new Set<ReviewEntry>();
  for (const { finding, subject, alone } of found) {
    const matter = byMatter.get(matterOf(subject));
    const here = alone ? matter : matter?.filter(({ place }) => place === subject.place);
    if (!here || here.length === 0) continue;
    const same = here.filter((entry) => standOf(entry) === standOf(subject));
    for (const entry of same) met.add(entry);
    const entry = same.at(-1);
    const last = here.at(-1)!;
    if (entry?.decision === "accepted") decided.set(finding, { decision: "accepted", entry });
    else if (entry) decided.set(finding, { decision: "open", entry });
    else if (last.decision === "accepted") decided.set(finding, { ...OPEN, reopened: last });
  }
  const notThere = inTime.filter((entry) => !met.has(entry));
  const lastWords = [
    ...grouped(notThere, (entry) => `${wholeOf(entry)}\n${entry.place}`).values(),
  ].map((same) => same.at(-1)!);
  const corrected = lastWords.filter(({ decision }) => decision === "corrected");
  // A test may have moved between two words on it.
  const settled = new Set(corrected.map(wholeOf));
  const accepted = [...decided.values()].filter(({ decision }) => decision === "accepted").length;
  return {
    of: (finding) => decided.get(finding) ?? OPEN,
    accepted,
    corrected,
    gone: lastWords.filter((entry) => !settled.has(wholeOf(entry))),
  };
}

/** What a finding is about, whatever stands there. */
export function matterOf({ sample, rule, column }: Subject): string {
  return [sample, rule, column].map((text) => text.trim()).join("\n");
}

/** What stood there, and the numbers that it was said with. */
function standOf({ value, figures }: Subject): string {
  return [value, figures].map((text) => text.trim()).join("\n");
}

/** All that a finding is known by, but for its place. */
export function wholeOf(subject: Subject): string {
  return `${matterOf(subject)}\n${standOf(subject)}`;
}

function grouped<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}

function compared(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
