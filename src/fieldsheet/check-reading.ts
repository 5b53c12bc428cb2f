import { isIssue, type Issue } from "../measure/issue";
import type { FieldId } from "../reading/fields";
import type { SheetReading } from "../reading/sheet-reading";
import type { Steps } from "../reading/steps";
import { asSpecified } from "./as-specified";
import type { CheckOptions } from "./check-options";
import type { CheckResult } from "./check-result";
import type { CheckedTest } from "./checked-test";
import { CheckOfTest } from "./check-of-test";
import { FindingsByTest } from "./findings-by-test";
import { limitsOfTests } from "./limits-of-tests";
import { notLookedAt } from "./not-looked-at";
import type { Rule } from "./rule";
import { RULES } from "./rules";
import { setupFindings } from "./setup-findings";
import { SheetTests } from "./sheet-tests";
import {
  columnsApartFindings,
  headedAgainFindings,
  saidOnceFindings,
  togetherFindings,
  unreadFindings,
} from "./unread-findings";

/** Few enough to take some thousandths of a second. */
const TESTS_IN_A_STEP = 500;

/** About the share of the time that looking at each test takes. */
const TESTS_TAKE = 0.8;

/**
 * Checks the tests of a sheet: every rule on every test, and every finding kept. In steps of some
 * hundred tests, so that a long check can show how far it is, let the page breathe and be stopped
 * between steps. Each step yields the share that is done, 0 to 1.
 *
 * @param sheet The sheet as read.
 * @param options Specification limits, if they do not stand in the sheet.
 * @returns For each test its state, its air content, how that stands to the specification, and the
 *   findings; and the findings of the sheet as a whole. The issue `limits-do-not-fit` where given limits
 *   are not for these tests.
 */
export function* checkInSteps(
  sheet: SheetReading,
  options: CheckOptions = {},
): Steps<CheckResult | Issue> {
  const limits = limitsOfTests(sheet, options);
  if (isIssue(limits)) return limits;
  const { records } = sheet;
  const specified = asSpecified(sheet, options.setup);
  const has = (field: FieldId) => sheet.has(field) || specified.given.has(field);
  const rules = RULES.filter((rule) => canSpeak(rule, has));
  const unread = unreadFindings(sheet);
  const undecided = unread.filter(({ column }) => column.decides);
  const findings = new FindingsByTest(records.length, undecided);

  const scaleEnd = options.scaleEnd ?? options.setup?.scaleEnd;
  const one = new CheckOfTest(sheet, rules, scaleEnd, findings);
  const results: CheckedTest[] = [];
  for (const record of records) {
    const read = specified.complete(limits.withUnreadable(record));
    results.push(one.check(read, limits.of(read)));
    const done = results.length;
    if (done % TESTS_IN_A_STEP === 0) yield (TESTS_TAKE * done) / records.length;
  }

  const tests = new SheetTests(results);
  const across = rules.filter((rule) => rule.kind === "looks across the sheet");
  for (const [i, rule] of across.entries()) {
    const done = TESTS_TAKE + ((1 - TESTS_TAKE) * i) / across.length;
    yield done;
    for (const remark of rule.look(tests, sheet)) {
      if (remark) findings.add(rule, remark);
      else yield done;
    }
  }
  return {
    reading: sheet,
    columns: sheet.columns,
    given: specified.given,
    results,
    tests,
    findings: [
      ...setupFindings(sheet, results, options.setup, specified.notCompared.values()),
      ...unread.map(({ finding }) => finding),
      ...columnsApartFindings(sheet),
      ...headedAgainFindings(sheet),
      ...togetherFindings(sheet),
      ...saidOnceFindings(sheet),
      ...findings.ofTheSheet,
      ...findings.ofTests(),
    ],
    notLookedAt: notLookedAt(sheet, results),
  };
}

/** Whether the sheet, or the setup, has the fields that a rule needs. */
function canSpeak({ needs, needsOneOf }: Rule, has: SheetReading["has"]): boolean {
  return needs.every(has) && (needsOneOf?.some(has) ?? true);
}
