import { DECIDING } from "../reading/deciding";
import type { FieldRecord } from "../reading/record";
import type { SheetReading } from "../reading/sheet-reading";
import { CheckedTest, type OwnCheck } from "./checked-test";
import type { Finding } from "./finding";
import { findingOf, type FindingsByTest } from "./findings-by-test";
import { judgeTest } from "./judge-test";
import type { JudgedTest, Limits, TestState } from "./judged-test";
import type { Remark, Rule, TestRule, VoidRule } from "./rule";

/** Cells that must be readable before a test can be called valid. */
const DECIDING_FIELDS = [...DECIDING];

/** Checks the tests of a sheet one by one: judged by the method, decided by the rules that void, looked at by the others. */
export class CheckOfTest implements OwnCheck {
  private readonly voiding: readonly VoidRule[];
  private readonly looking: readonly TestRule[];

  constructor(
    private readonly sheet: SheetReading,
    rules: readonly Rule[],
    private readonly scaleEnd: number | undefined,
    private readonly findings: FindingsByTest,
  ) {
    this.voiding = rules.filter((rule) => rule.kind === "voids a test");
    this.looking = rules.filter((rule) => rule.kind === "looks at a test");
  }

  judge(read: FieldRecord, limits: Limits): JudgedTest {
    return judgeTest(read, this.sheet, limits, this.scaleEnd);
  }

  findingsOf(record: number): readonly Finding[] {
    return this.findings.of(record);
  }

  /** @param read The test, with what is given for it beside its own cells. */
  check(read: FieldRecord, limits: Limits): CheckedTest {
    const judged = this.judge(read, limits);
    const { record } = judged;
    if (judged.blank) return new CheckedTest(read, "", judged, this).letGo();
    const found: Finding[] = [];
    for (const rule of ofItsMethod(judged, this.voiding)) {
      add(found, rule, record, rule.look(judged, this.sheet));
    }
    const state = this.stateOf(judged, found.length > 0);
    const decided = new CheckedTest(read, state, judged, this);
    for (const rule of ofItsMethod(judged, this.looking)) {
      add(found, rule, record, rule.look(decided, this.sheet));
    }
    if (found.length > 0) this.findings.keep(record, found);
    return decided.letGo();
  }

  /** A void finding decides; else a test without a result, or with a deciding cell, word or column that was not read, is incomplete. */
  private stateOf(test: JudgedTest, isVoid: boolean): TestState {
    if (isVoid) return "void";
    const { result, unreadable, testersWord, record } = test;
    const isOpen =
      result === undefined ||
      testersWord !== undefined ||
      DECIDING_FIELDS.some((field) => unreadable[field]) ||
      this.findings.leavesOpen(record);
    return isOpen ? "incomplete" : "valid";
  }
}

/** The rules that look at a test of its method. */
function ofItsMethod<R extends VoidRule | TestRule>(
  { otherMethod }: JudgedTest,
  rules: readonly R[],
): readonly R[] {
  return otherMethod === undefined ? rules : rules.filter(({ anyMethod }) => anyMethod);
}

/** Adds what a rule says of a test to what was found. */
function add(
  found: Finding[],
  rule: VoidRule | TestRule,
  record: number,
  said: Remark | readonly Remark[] | undefined,
): void {
  if (said === undefined) return;
  if (!isList(said)) found.push(findingOf(rule, record, said));
  else for (const remark of said) found.push(findingOf(rule, record, remark));
}

function isList(said: Remark | readonly Remark[]): said is readonly Remark[] {
  return Array.isArray(said);
}
