import { shownValue } from "../../../measure/cell-value";
import type { CheckResult } from "../../../fieldsheet/check-result";
import type { Finding } from "../../../fieldsheet/rule";
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
  const { findings, results } = checked.result;
  const keyOf = (sample: string, rule: string) => `${rule}\n${sample.trim()}`;
  const written = new Set(entries.map(({ sample, rule }) => keyOf(sample, rule)));
  const named = testsBySample(checked.result);
  const found = findings
    .filter(({ record, rule }) =>
      written.has(keyOf(record === null ? "" : results[record]!.sample, rule)),
    )
    .map((finding) => ({ finding, subject: subjectOf(finding, checked) }));
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
        : subject.sample !== "" && named.get(subject.sample) === 1,
  }));
}

/** Finds a finding again in a later check, by what it is known by; where several are alike, by its place. */
export function foundAgain(subject: Subject, now: CheckedArea): Finding | undefined {
  const whole = wholeOf(subject);
  const alike = now.result.findings.filter(
    (finding) => finding.rule === subject.rule && wholeOf(subjectOf(finding, now)) === whole,
  );
  if (alike.length === 1) return alike[0];
  return alike.find((finding) => subjectOf(finding, now).place === subject.place);
}

/** How many tests have each sample. */
export function testsBySample({ results }: CheckResult): ReadonlyMap<string, number> {
  const named = new Map<string, number>();
  for (const { sample, test } of results)
    if (test !== "") named.set(sample, (named.get(sample) ?? 0) + 1);
  return named;
}
