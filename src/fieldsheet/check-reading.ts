import { compareWithLimits } from "../acceptance/limits";
import { isIssue, type Issue } from "../measure/issue";
import { DECIDING } from "../reading/deciding";
import type { FieldRecord, Unreadable } from "../reading/record";
import type { SheetReading } from "../reading/sheet-reading";
import { asSpecified } from "./as-specified";
import type { CheckOptions } from "./check-options";
import type { CheckResult, TestResult } from "./check-result";
import { judgeTest } from "./judge-test";
import type { DecidedTest, JudgedTest, TestState } from "./judged-test";
import { notLookedAt } from "./not-looked-at";
import { limitsOfTests } from "./limits-of-tests";
import type { Finding, Remark, RemarkAt, Rule, SheetRule, TestRule, VoidRule } from "./rule";
import { RULES } from "./rules";
import { setupFindings } from "./setup-findings";
import { unreadFindings } from "./unread-findings";
import { SheetTests } from "./sheet-tests";

const NOTHING_FOUND: readonly Finding[] = [];

/** Cells that must be readable before a test can be called valid. */
const DECIDING_FIELDS = [...DECIDING];

/** Few enough to take some hundredths of a second. */
const TESTS_IN_A_STEP = 500;

/**
 * Checks the tests of a sheet: every rule on every test, and every finding kept. In steps of some
 * hundred tests, so that a long check can show how far it is, let the page breathe and be stopped
 * between steps. Each step yields the share that is done, 0 to 1.
 *
 * @param sheet The sheet as read.
 * @param options Specification limits, if they do not stand in the sheet.
 * @returns For each test its state, its air content, how that stands to the specification, and the
 *   findings; and the findings of the sheet as a whole.
 * @returns The issue `limits-do-not-fit` where given limits are not for these tests.
 */
export function* checkInSteps(
  sheet: SheetReading,
  options: CheckOptions = {},
): Generator<number, CheckResult | Issue> {
  const limits = limitsOfTests(sheet, options);
  if (isIssue(limits)) return limits;
  const specified = asSpecified(sheet, options.setup);
  const rules = RULES.filter((rule) =>
    canSpeak(rule, (field) => sheet.has(field) || specified.gives(field)),
  );
  const voiding = rules.filter((rule) => rule.kind === "voids a test");
  const others = rules.filter((rule) => rule.kind === "looks at a test");
  const across = rules.filter((rule) => rule.kind === "looks across the sheet");
  const scaleEnd = options.scaleEnd ?? options.setup?.scaleEnd;

  const unread = unreadFindings(sheet);
  const undecided = unread.filter(({ column }) => column.decides);
  const tests: DecidedTest[] = [];
  const found: (readonly Finding[])[] = [];
  for (let i = 0; i < sheet.records.length; i++) {
    if (i > 0 && i % TESTS_IN_A_STEP === 0) yield (0.8 * i) / sheet.records.length;
    const read = withUnreadable(sheet.records[i]!, limits.unreadable.get(i));
    const record = specified.complete(read);
    const judged = judgeTest(record, sheet, limits.of(record), scaleEnd);
    const findings: Finding[] = [];
    for (const rule of lookingAt(judged, voiding))
      add(findings, rule, judged.record, rule.look(judged, sheet));
    const open = undecided.some(({ column }) => column.touches(i));
    const test = { ...judged, state: stateOf(judged, findings, open) };
    for (const rule of lookingAt(test, others))
      add(findings, rule, test.record, rule.look(test, sheet));
    tests.push(test);
    found.push(findings.length > 0 ? withoutYielded(findings) : NOTHING_FOUND);
  }

  const together = new SheetTests(tests);
  const ofTheSheet: Finding[] = [];
  const touching: Finding[] = [];
  const behind = new Map<number, Finding[]>();
  for (const [i, rule] of across.entries()) {
    yield 0.8 + (0.2 * i) / across.length;
    for (const remark of rule.look(together, sheet)) {
      const finding = findingOf(rule, remark.record, remark);
      if (remark.record !== null) found[remark.record] = [...found[remark.record]!, finding];
      else ofTheSheet.push(finding);
      if (remark.record === null && rule.touchesEveryTest) touching.push(finding);
      for (const record of remark.behind ?? []) {
        found[record] = found[record]!.filter((own) => own.rule !== rule.speaksFor);
        behind.set(record, [...(behind.get(record) ?? []), finding]);
      }
    }
  }
  const saidOf = (record: number): readonly Finding[] => {
    if (undecided.length === 0 && !behind.has(record)) return touching;
    const touched = undecided.filter(({ column }) => column.touches(record));
    return [...touched.map(({ finding }) => finding), ...touching, ...(behind.get(record) ?? [])];
  };
  const results = tests.map((test, i) => testResult(test, found[i]!, saidOf(i)));
  return {
    reading: sheet,
    columns: sheet.columns,
    results,
    tests: together,
    findings: [
      ...setupFindings(sheet, tests, options.setup, specified.notCompared.values()),
      ...unread.map(({ finding }) => finding),
      ...ofTheSheet,
      ...found.flat(),
    ],
    notLookedAt: notLookedAt(sheet, tests),
  };
}

/** The same in one go. */
export function checkReading(sheet: SheetReading, options?: CheckOptions): CheckResult | Issue {
  const steps = checkInSteps(sheet, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Whether the sheet, or the setup, has the fields that a rule needs. */
function canSpeak({ needs, needsOneOf }: Rule, has: SheetReading["has"]): boolean {
  return needs.every(has) && (needsOneOf?.some(has) ?? true);
}

function withUnreadable(record: FieldRecord, more: Unreadable | undefined): FieldRecord {
  return more ? { ...record, unreadable: { ...record.unreadable, ...more } } : record;
}

/** The rules that look at a test at all. */
function lookingAt<R extends VoidRule | TestRule>(
  { blank, otherMethod }: JudgedTest,
  rules: readonly R[],
): readonly R[] {
  if (blank) return [];
  return otherMethod === undefined ? rules : rules.filter(({ anyMethod }) => anyMethod);
}

/** Adds what a rule says of a test to what was found. */
function add(
  findings: Finding[],
  rule: VoidRule | TestRule,
  record: number,
  said: Remark | readonly Remark[] | undefined,
): void {
  if (said === undefined) return;
  if (!isList(said)) findings.push(findingOf(rule, record, said));
  else for (const remark of said) findings.push(findingOf(rule, record, remark));
}

function isList(said: Remark | readonly Remark[]): said is readonly Remark[] {
  return Array.isArray(said);
}

const YIELDING = new Map(RULES.flatMap(({ id, yieldsTo }) => (yieldsTo ? [[id, yieldsTo]] : [])));

/** Without what a rule says of a cell of which another, that goes first, speaks as well. */
function withoutYielded(findings: Finding[]): Finding[] {
  if (!findings.some(({ rule }) => YIELDING.has(rule))) return findings;
  return findings.filter(({ rule, field }) => {
    const first = YIELDING.get(rule);
    return !first || !findings.some((other) => other.field === field && first.includes(other.rule));
  });
}

function findingOf(
  rule: VoidRule | TestRule | SheetRule,
  record: number | null,
  {
    field,
    place,
    say = rule.says[0]!,
    values = {},
    causes,
    behind,
  }: Remark & Pick<RemarkAt, "behind">,
): Finding {
  const finding = { record, field, rule: rule.id, weight: rule.weight, say, values };
  if (!place && !causes && !behind) return finding;
  return {
    ...finding,
    ...(place && { place }),
    ...(causes && { causes }),
    ...(behind && { behind }),
  };
}

/** A void finding decides; else a test without a result, or with a deciding cell, word or column that was not read, is incomplete. */
function stateOf(test: JudgedTest, findings: readonly Finding[], open: boolean): TestState {
  if (test.blank) return "";
  if (findings.some(({ weight }) => weight === "void")) return "void";
  const unread = DECIDING_FIELDS.some((field) => test.unreadable[field]);
  const asked = test.testersWord !== undefined;
  return test.result === undefined || unread || asked || open ? "incomplete" : "valid";
}

function testResult(
  judged: DecidedTest,
  own: readonly Finding[],
  touching: readonly Finding[],
): TestResult {
  const { low, high } = judged.limits;
  const air = judged.state === "valid" ? judged.result?.air : undefined;
  const limited = air !== undefined && (low !== undefined || high !== undefined);
  return {
    record: judged.record,
    sample: judged.values.sample ?? judged.values.load ?? "",
    test: judged.state,
    air,
    specification: limited ? compareWithLimits(air, low, high) : undefined,
    findings: judged.blank || touching.length === 0 ? own : [...touching, ...own],
    judged,
  };
}
