import { shownValue } from "../measure/cell-value";
import type { CheckResult } from "../fieldsheet/check-result";
import type { Finding } from "../fieldsheet/finding";
import type { FieldId } from "../reading/fields";

/** A finding that is not there any more because somebody has changed cells of its test. */
export interface Correction {
  /** The finding as it was. */
  readonly finding: Finding;
  readonly oldValue: string;
  readonly newValue: string;
}

/**
 * What was corrected between two checks of a sheet: findings that are gone, of tests in which cells have
 * changed. A test is known again by its sample where only one test has it, else by its place where no test
 * was added or taken away.
 */
export function correctionsBetween(before: CheckResult, now: CheckResult): Correction[] {
  const lost = lostFindings(before, now);
  if (lost.length === 0) return [];
  const recordNow = recordsNow(before, now);
  return lost.flatMap((finding) => {
    const record = recordNow(finding.record!);
    if (record === undefined) return [];
    const changed = (Object.keys(before.columns) as FieldId[]).flatMap((field) => {
      const [was, is] = [before, now].map(({ reading }, i) =>
        reading.has(field)
          ? shownValue(reading.cell(i === 0 ? finding.record! : record, field))
          : "",
      );
      return was === is ? [] : [{ field, was: was!, is: is! }];
    });
    return changed.length === 0 ? [] : [{ finding, ...asValues(finding, changed, before) }];
  });
}

interface Change {
  readonly field: FieldId;
  readonly was: string;
  readonly is: string;
}

/** Of the finding's own cell plainly, of others with their headers. */
function asValues({ field }: Finding, changes: readonly Change[], { columns }: CheckResult) {
  const [first] = changes;
  if (changes.length === 1 && first!.field === field)
    return { oldValue: first!.was, newValue: first!.is };
  const listed = (which: "was" | "is") =>
    changes.map((one) => `${columns[one.field]!.header}: ${one[which]}`).join("; ");
  return { oldValue: listed("was"), newValue: listed("is") };
}

/**
 * Findings about tests that the second check does not have any more. Of several tests with one name, a
 * finding is looked for at its own place before it is looked for at any.
 */
function lostFindings(before: CheckResult, now: CheckResult): Finding[] {
  const recordsLeft = new Map<string, number[]>();
  const keyOf = ({ record, rule, field }: Finding, { results }: CheckResult) =>
    [results[record!]!.sample, rule, field].join("\n");
  const ofTests = ({ findings }: CheckResult) => findings.filter(({ record }) => record !== null);
  for (const finding of ofTests(now)) {
    const key = keyOf(finding, now);
    const records = recordsLeft.get(key);
    if (records) records.push(finding.record!);
    else recordsLeft.set(key, [finding.record!]);
  }
  const isLeft = (finding: Finding, where: (records: readonly number[]) => number) => {
    const records = recordsLeft.get(keyOf(finding, before)) ?? [];
    const at = where(records);
    return at !== -1 && records.splice(at, 1).length === 1;
  };
  return ofTests(before)
    .filter((finding) => !isLeft(finding, (records) => records.indexOf(finding.record!)))
    .filter((finding) => !isLeft(finding, (records) => records.length - 1));
}

function recordsNow(before: CheckResult, now: CheckResult): (record: number) => number | undefined {
  const [samplesBefore, samplesNow] = [before, now].map(recordBySample);
  const inPlace = before.results.length === now.results.length;
  return (record) => {
    const { sample } = before.results[record]!;
    if (sample !== "" && samplesBefore!.get(sample) === record) {
      const found = samplesNow!.get(sample);
      if (found !== undefined) return found;
    }
    return inPlace && now.results[record]!.sample === sample ? record : undefined;
  };
}

/** The results of samples that name one test only. */
function recordBySample({ results }: CheckResult): Map<string, number | undefined> {
  const found = new Map<string, number | undefined>();
  for (const { sample, record } of results)
    found.set(sample, found.has(sample) ? undefined : record);
  return found;
}
