import { shownValue } from "../../../measure/cell-value";
import { correctionsBetween } from "../../../review/corrections";
import type { ReviewEntry, Subject } from "../../../review/review-entry";
import { matterOf, wholeOf } from "../../../review/reviewed-findings";
import type { FieldId } from "../../../reading/fields";
import type { CheckedArea } from "../checked-area";
import { sentenceOfFinding } from "../sentence-of-finding";
import { findingsAbout, recordsBySample, subjectOf } from "./finding-on-sheet";
import type { ReviewOfCheck } from "./review-of";

/** A correction that the user may want to have recorded. */
export interface NoticedCorrection {
  readonly subject: Subject;
  /** The finding in words, as it was said. */
  readonly finding: string;
  readonly oldValue: string;
  readonly newValue: string;
}

/** What tells one noticed correction from another. */
export function correctionKey({ subject }: NoticedCorrection): string {
  return `${wholeOf(subject)}\n${subject.place}`;
}

/** What was corrected between two checks of a sheet. */
export function noticedBetween(before: CheckedArea, now: CheckedArea): NoticedCorrection[] {
  return correctionsBetween(before.result, now.result).map(({ finding, oldValue, newValue }) => ({
    subject: subjectOf(finding, before),
    finding: sentenceOfFinding(finding, before),
    oldValue,
    newValue,
  }));
}

/**
 * What was corrected since it was accepted or left open, also by somebody else on another day: the finding
 * is not there, and its cell holds something else by now.
 */
export function noticedInReview(now: CheckedArea, { gone }: ReviewOfCheck): NoticedCorrection[] {
  const { columns, reading } = now.result;
  const records = recordsBySample(now.result);
  return gone.flatMap((entry: ReviewEntry) => {
    const record = records.get(entry.sample);
    if (entry.column === "" || typeof record !== "number") return [];
    const field = (Object.keys(columns) as FieldId[]).find(
      (id) => columns[id]!.header.trim() === entry.column,
    );
    if (!field) return [];
    const value = shownValue(reading.cell(record, field)).trim();
    if (value === entry.value) return [];
    return [{ subject: entry, finding: entry.finding, oldValue: entry.value, newValue: value }];
  });
}

/** Of noticed corrections, each once, those whose finding is not there again in any form. */
export function stillGone(
  noticed: readonly NoticedCorrection[],
  now: CheckedArea,
): NoticedCorrection[] {
  if (noticed.length === 0) return [];
  const subjects = noticed.map(({ subject }) => subject);
  const there = new Set(findingsAbout(now, subjects).map(({ subject }) => matterOf(subject)));
  const once = new Map(noticed.map((one) => [wholeOf(one.subject), one]));
  return [...once.values()].filter(({ subject }) => !there.has(matterOf(subject)));
}
