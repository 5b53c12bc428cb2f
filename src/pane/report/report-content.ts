import type { TestResult } from "../../fieldsheet/test-result";
import { notLookedAtSentence } from "../../fieldsheet/not-looked-at";
import { WEIGHTS, type Finding, type Weight } from "../../fieldsheet/finding";
import { RULES } from "../../fieldsheet/rules";
import type { CellValue } from "../../measure/cell-value";
import type { DecimalMark } from "../../measure/number-from-cell";
import { writtenDay } from "../../measure/spreadsheet-day";
import { inLine, say } from "../../messages/pane-catalogue";
import { notRead } from "../state/check-read";
import { placeOf, type CheckedArea } from "../state/checked-area";
import { STATES, VERDICTS } from "../state/counts";
import { fieldName, type FieldId } from "../../reading/fields";
import { fieldsNotThere } from "../state/not-checked";
import { sentenceOfFinding } from "../state/sentence-of-finding";
import { whereOf } from "../state/where-of";
import { HEADING_FIELDS, type HeadingField } from "./heading-words";
import { headingOfSheet, type HeadingOfSheet } from "./heading-of-sheet";
import { reportColumns, type ReportColumn } from "./report-columns";
import { testsInScope, type ReportScope } from "./report-scope";
import { correctedSentence, decisionSentence } from "../state/review/decision-sentence";
import {
  DECIDED_AS,
  reviewOf,
  type DecidedAs,
  type ReviewOfCheck,
} from "../state/review/review-of";
import type { ReviewOnSheet } from "../state/review/review-on-sheet";

/** What a report is made with, besides the check itself. */
export interface ReportGiven {
  readonly scope: ReportScope;
  /** What was typed for the head of the report; what the sheet itself says goes first. */
  readonly typed: HeadingOfSheet;
  /** Cells of the sheet above what was checked. */
  readonly above: readonly (readonly CellValue[])[];
  /** Name of the file. */
  readonly file: string;
  /** Version of this program. */
  readonly version: string;
  /** What the workbook holds of decisions about findings. */
  readonly review: ReviewOnSheet;
}

/** A finding as a report lists it. */
export interface ReportFinding {
  readonly where: string;
  readonly weight: Weight;
  readonly sentence: string;
  /** What a reviewer has decided; "" for nothing yet. */
  readonly decision: string;
}

/** The findings of one test, or of the sheet as a whole. */
export interface FindingsOfTest {
  readonly test: string;
  readonly findings: readonly ReportFinding[];
}

/** A report in words and numbers, for paper, a sheet or a file. */
export interface ReportContent {
  readonly heading: readonly { readonly field: HeadingField; readonly value: string }[];
  /** What was checked, by which rules and when. */
  readonly about: readonly string[];
  readonly counts: readonly string[];
  readonly columns: readonly ReportColumn[];
  readonly tests: readonly TestResult[];
  readonly findings: readonly FindingsOfTest[];
  /** What was found before and was corrected, in sentences. */
  readonly corrected: readonly string[];
  /** What was not looked at and what was not read. */
  readonly notChecked: readonly string[];
  readonly decimal: DecimalMark;
}

/** Puts together what a report of checked tests says. */
export function reportContent(checked: CheckedArea, given: ReportGiven): ReportContent {
  const { result, decimal } = checked;
  const scope = testsInScope(result, given.scope);
  const { tests } = scope;
  const ofSheet = headingOfSheet(checked, tests, given.above);
  const findings = scope.others === 0 ? result.findings : findingsOf(tests, result.findings);
  const review = reviewOf(checked, given.review);
  return {
    heading: HEADING_FIELDS.map((field) => ({
      field,
      value: ofSheet[field] ?? given.typed[field]?.trim() ?? "",
    })),
    about: [scopeSentence(given.scope, checked), ...aboutCheck(checked, given)],
    counts: countSentences(tests, findings, review),
    columns: reportColumns(checked, tests),
    tests,
    findings: byTest(findings, checked, review),
    // A correction is known by its test only in words, so all of the sheet are told.
    corrected: review.corrected.map(correctedSentence),
    notChecked: [
      notLookedAtSentence(result.notLookedAt) ?? say("pane-not-checked-nothing"),
      ...otherFields(fieldsNotThere(result)),
      ...notRead(checked.read),
      ...(scope.undated > 0 ? [say("report-undated", { tests: scope.undated })] : []),
      ...(scope.others > 0 ? [say("report-others", { tests: scope.others })] : []),
    ],
    decimal,
  };
}

function otherFields(fields: readonly FieldId[]): string[] {
  return fields.length > 0
    ? [say("report-not-there", { fields: { all: fields.map(fieldName) } })]
    : [];
}

function scopeSentence(scope: ReportScope, { result }: CheckedArea): string {
  if (scope.kind === "day") return say("report-of-day", { day: writtenDay(scope.day) });
  if (scope.kind === "week")
    return say("report-of-week", {
      from: writtenDay(scope.monday),
      to: writtenDay(scope.monday + 6),
    });
  if (scope.kind === "all") return say("report-of-all");
  const sample = result.results[scope.record]?.sample;
  return sample ? say("report-of-test", { sample }) : say("report-of-one");
}

function aboutCheck({ read, at }: CheckedArea, { file, version }: ReportGiven): string[] {
  const { area, address } = read;
  const cells = address.slice(address.lastIndexOf("!") + 1);
  return [
    say("report-source", { file, sheet: area.sheetName, cells }),
    say("report-checked-by", { version, rules: RULES.length, time: localTime(at) }),
  ];
}

/** "2026-06-10 14:05 (UTC−06:00)": the time of the machine, and what it is by. */
export function localTime(at: Date): string {
  const two = (number: number) => String(number).padStart(2, "0");
  const day = [at.getFullYear(), two(at.getMonth() + 1), two(at.getDate())].join("-");
  const ahead = -at.getTimezoneOffset();
  const offset = `${two(Math.floor(Math.abs(ahead) / 60))}:${two(Math.abs(ahead) % 60)}`;
  const sign = ahead < 0 ? "−" : "+";
  return `${day} ${two(at.getHours())}:${two(at.getMinutes())} (UTC${sign}${offset})`;
}

function findingsOf(
  tests: readonly TestResult[],
  findings: readonly Finding[],
): readonly Finding[] {
  const inScope = new Set(tests.map(({ record }) => record));
  return findings.filter(({ record }) => record === null || inScope.has(record));
}

function countSentences(
  tests: readonly TestResult[],
  findings: readonly Finding[],
  { of, corrected }: ReviewOfCheck,
): string[] {
  const counted = <
    K extends (typeof STATES)[number] | (typeof VERDICTS)[number] | Weight | DecidedAs,
  >(
    kinds: readonly K[],
    count: (kind: K) => number,
  ) => kinds.map((kind) => `${inLine(`word-${kind}`)} ${count(kind)}`).join(", ");
  const compared = tests.some(({ specification }) => specification !== undefined);
  const states = counted(STATES, (state) => tests.filter((test) => test.state === state).length);
  const verdicts = counted(
    VERDICTS,
    (verdict) => tests.filter(({ specification }) => specification === verdict).length,
  );
  const weights = counted(
    WEIGHTS,
    (weight) => findings.filter((finding) => finding.weight === weight).length,
  );
  const decided = counted(DECIDED_AS, (kind) =>
    kind === "corrected"
      ? corrected.length
      : findings.filter((finding) => of(finding).decision === kind).length,
  );
  return [
    say("report-tests", { counts: states }),
    compared ? say("report-specification", { counts: verdicts }) : say("report-no-specification"),
    say("report-findings", { counts: weights }),
    say("review-report", { counts: decided }),
  ];
}

/** Findings come test by test already, those of the sheet as a whole first. */
function byTest(
  findings: readonly Finding[],
  checked: CheckedArea,
  { of }: ReviewOfCheck,
): FindingsOfTest[] {
  const groups: { record: number | null; test: string; findings: ReportFinding[] }[] = [];
  for (const finding of findings) {
    let group = groups.at(-1);
    if (!group || group.record !== finding.record) {
      group = { record: finding.record, test: nameOfTest(finding.record, checked), findings: [] };
      groups.push(group);
    }
    group.findings.push({
      where: whereOf(finding, checked),
      weight: finding.weight,
      sentence: sentenceOfFinding(finding, checked),
      decision: decisionSentence(of(finding)),
    });
  }
  return groups;
}

function nameOfTest(record: number | null, checked: CheckedArea): string {
  if (record === null) return say("report-whole-sheet");
  const { sample } = checked.result.results[record]!;
  const at = placeOf(checked, { record, field: null }).row + 1;
  return sample
    ? say("report-sample-in-row", { sample, row: at })
    : say("report-row-alone", { row: at });
}
