import { shownValue } from "../../../measure/cell-value";
import type { CheckResult } from "../../../fieldsheet/check-result";
import type { Finding } from "../../../fieldsheet/finding";
import { blockAddress } from "../../../hosts/cell-address";
import { figuresOf } from "../../../review/figures";
import type { ReviewEntry, Subject } from "../../../review/review-entry";
import { wholeOf, type FindingOnSheet } from "../../../review/reviewed-findings";
import { placeOf, type CheckedArea } from "../checked-area";

/** What a finding is known by on its sheet. */
export function subjectOf(finding: Finding, checked: CheckedArea): Subject {
  const { result, read } = checked;
  const { record, field, rule, header, values } = finding;
  return {
    sheet: read.area.sheetName,
    sample: record === null ? "" : result.results[record]!.sample,
    place: blockAddress({ ...placeOf(checked, finding), rows: 1, columns: 1 }),
    rule,
    column: (field === null ? header : result.columns[field]?.header) ?? "",
    value:
      record === null || field === null
        ? ""
        : shownValue(result.reading.cell(record, field)).trim(),
    figures: figuresOf(values),
  };
}

/** The findings of which something may stand in a review, with what they are known by. */
export function findingsOnSheet(
  checked: CheckedArea,
  entries: readonly ReviewEntry[],
): FindingOnSheet[] {
  if (entries.length === 0) return [];
  const records = recordsBySample(checked.result);
  const found = findingsAbout(checked, entries);
  const alike = new Map<string, number>();
  for (const { finding, subject } of found)
    if (finding.record === null) {
      const whole = wholeOf(subject);
      alike.set(whole, (alike.get(whole) ?? 0) + 1);
    }
  return found.map(({ finding, subject }) => ({
    finding,
    subject,
    alone:
      finding.record === null
        ? alike.get(wholeOf(subject)) === 1
        : typeof records.get(subject.sample) === "number",
  }));
}

/**
 * Finds findings again in a later check, by what they are known by; where several are alike, by the place.
 *
 * @returns In the order of the subjects; `undefined` for one that is not there any more.
 */
export function foundAgain(
  subjects: readonly Subject[],
  now: CheckedArea,
): readonly (Finding | undefined)[] {
  const byWhole = new Map<string, { finding: Finding; subject: Subject }[]>();
  for (const one of findingsAbout(now, subjects)) {
    const whole = wholeOf(one.subject);
    byWhole.set(whole, [...(byWhole.get(whole) ?? []), one]);
  }
  return subjects.map((wanted) => {
    const alike = byWhole.get(wholeOf(wanted)) ?? [];
    const [only] = alike;
    if (alike.length === 1) return only!.finding;
    return alike.find(({ subject }) => subject.place === wanted.place)?.finding;
  });
}

/** The findings by the rules and of the samples of some subjects: few of them are worked out further. */
export function findingsAbout(
  checked: CheckedArea,
  subjects: readonly Pick<Subject, "rule" | "sample">[],
): { readonly finding: Finding; readonly subject: Subject }[] {
  const { findings, results } = checked.result;
  const keyOf = (rule: string, sample: string) => `${rule}\n${sample.trim()}`;
  const wanted = new Set(subjects.map(({ rule, sample }) => keyOf(rule, sample)));
  const rules = new Set(subjects.map(({ rule }) => rule));
  return findings
    .filter(
      ({ rule, record }) =>
        rules.has(rule) && wanted.has(keyOf(rule, record === null ? "" : results[record]!.sample)),
    )
    .map((finding) => ({ finding, subject: subjectOf(finding, checked) }));
}

/** The one test of each sample; "several" where more have it, and nothing for tests without one. */
export function recordsBySample({ results }: CheckResult): ReadonlyMap<string, number | "several"> {
  const records = new Map<string, number | "several">();
  for (const { sample, state, record } of results)
    if (state !== "" && sample !== "")
      records.set(sample, records.has(sample) ? "several" : record);
  return records;
}
