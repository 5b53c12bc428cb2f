import { compareWithLimits } from "../acceptance/limits";
import type { FieldRecord } from "../reading/record";
import type { SheetReading } from "../reading/sheet-reading";
import type { CheckOptions } from "./check-options";
import type { CheckResult, RowResult } from "./check-result";
import { DECIDING_FIELDS, judgeTest } from "./judge-test";
import type { DecidedTest, JudgedTest, TestState } from "./judged-test";
import { notLookedAt } from "./not-looked-at";
import { rowLimits } from "./row-limits";
import type { Finding, Remark, Rule, SheetRule, TestRule, VoidRule } from "./rule";
import { RULES } from "./rules";
import { SheetTests } from "./sheet-tests";

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
 * @throws Problem `limits-do-not-fit`.
 */
export function* checkInSteps(
  sheet: SheetReading,
  options: CheckOptions = {},
): Generator<number, CheckResult> {
  const rules = RULES.filter((rule) => canSpeak(rule, sheet));
  const voiding = rules.filter((rule) => rule.kind === "voids a test");
  const others = rules.filter((rule) => rule.kind === "looks at a test");
  const across = rules.filter((rule) => rule.kind === "looks across the sheet");
  const limitsOf = rowLimits(sheet, options);

  const tests: DecidedTest[] = [];
  const found: Finding[][] = [];
  for (const [i, record] of sheet.records.entries()) {
    if (i > 0 && i % TESTS_IN_A_STEP === 0) yield (0.8 * i) / sheet.records.length;
    const { test, findings } = checkTest(record, sheet, limitsOf, voiding, others);
    tests.push(test);
    found.push(findings);
  }

  const together = new SheetTests(tests);
  const ofTheSheet: Finding[] = [];
  const touching: Finding[] = [];
  for (const [i, rule] of across.entries()) {
    yield 0.8 + (0.2 * i) / across.length;
    for (const remark of rule.look(together, sheet)) {
      const finding = findingOf(rule, remark.row, remark);
      if (remark.row !== null) found[remark.row]!.push(finding);
      else ofTheSheet.push(finding);
      if (remark.row === null && rule.touchesEveryTest) touching.push(finding);
    }
  }
  const rows = tests.map((test, i) => rowResult(test, found[i]!, touching));
  return {
    reading: sheet,
    columns: sheet.columns,
    rows,
    findings: [...ofTheSheet, ...found.flat()],
    notLookedAt: notLookedAt(sheet, tests),
  };
}

/** The same in one go. */
export function checkReading(sheet: SheetReading, options?: CheckOptions): CheckResult {
  const steps = checkInSteps(sheet, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Whether the sheet has the fields that a rule needs. */
function canSpeak({ needs, needsOneOf }: Rule, sheet: SheetReading): boolean {
  return needs.every(sheet.has) && (needsOneOf?.some(sheet.has) ?? true);
}

/** One test, read, then judged by the method, then decided by the rules that void it. */
function checkTest(
  record: FieldRecord,
  sheet: SheetReading,
  limitsOf: ReturnType<typeof rowLimits>,
  voiding: readonly VoidRule[],
  others: readonly TestRule[],
): { test: DecidedTest; findings: Finding[] } {
  const limited = limitsOf(record);
  const judged = judgeTest(limited.record, sheet, limited.limits);
  const findings: Finding[] = [];
  for (const rule of voiding) lookAt(judged, rule, (test) => rule.look(test, sheet), findings);
  const test = { ...judged, state: stateOf(judged, findings) };
  for (const rule of others) lookAt(test, rule, (test) => rule.look(test, sheet), findings);
  return { test, findings: withoutYielded(findings) };
}

function lookAt<T extends JudgedTest>(
  test: T,
  rule: VoidRule | TestRule,
  look: (test: T) => Remark | readonly Remark[] | undefined,
  findings: Finding[],
): void {
  if (test.blank || (test.otherMethod && !rule.anyMethod)) return;
  const said = look(test);
  if (!said) return;
  for (const remark of Array.isArray(said) ? (said as readonly Remark[]) : [said as Remark]) {
    findings.push(findingOf(rule, test.row, remark));
  }
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
  row: number | null,
  { field, as = rule.id, say = rule.says[0]!, values = {} }: Remark,
): Finding {
  return { row, field, rule: as, weight: rule.weight, say, values };
}

/** A void finding decides; else a test without a result, or with a deciding cell that cannot be read, is incomplete. */
function stateOf(test: JudgedTest, findings: readonly Finding[]): TestState {
  if (test.blank) return "";
  if (findings.some(({ weight }) => weight === "void")) return "void";
  const unread = DECIDING_FIELDS.some((field) => test.unreadable[field]);
  return test.result === undefined || unread ? "incomplete" : "valid";
}

function rowResult(
  judged: DecidedTest,
  own: readonly Finding[],
  touching: readonly Finding[],
): RowResult {
  const { low, high } = judged.limits;
  const air = judged.state === "valid" ? judged.result?.air : undefined;
  const limited = air !== undefined && (low !== undefined || high !== undefined);
  return {
    row: judged.row,
    sample: judged.values.sample ?? judged.values.load ?? "",
    test: judged.state,
    air,
    specification: limited ? compareWithLimits(air, low, high) : undefined,
    findings: judged.blank || touching.length === 0 ? own : [...touching, ...own],
    judged,
  };
}
