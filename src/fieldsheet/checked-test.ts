import { verdictOn, type Verdict } from "../acceptance/limits";
import type { FieldRecord } from "../reading/record";
import type { TestResult } from "./test-result";
import type { Finding } from "./finding";
import type { JudgedTest, Limits, TestState } from "./judged-test";

/** The check that a test belongs to. */
export interface OwnCheck {
  judge(read: FieldRecord, limits: Limits): JudgedTest;
  findingsOf(record: number): readonly Finding[];
}

/**
 * A test of a check. Only what it comes to is kept; what the method made of it is worked out again for
 * whoever asks, since few tests of a long sheet are looked at twice.
 */
export class CheckedTest implements TestResult {
  readonly limits: Limits;
  readonly air: number | undefined;

  /** @param fresh What the method makes of the test; held until it is let go. */
  constructor(
    private readonly read: FieldRecord,
    readonly state: TestState,
    private fresh: JudgedTest | undefined,
    private readonly check: OwnCheck,
  ) {
    this.limits = fresh!.limits;
    this.air = state === "valid" ? fresh!.result?.air : undefined;
  }

  letGo(): this {
    this.fresh = undefined;
    return this;
  }

  get record() {
    return this.read.record;
  }
  get blank() {
    return this.read.blank;
  }
  get values() {
    return this.read.values;
  }
  get sample(): string {
    return this.values.sample ?? this.values.load ?? "";
  }
  get specification(): Verdict | undefined {
    return this.air === undefined ? undefined : verdictOn(this.air, this.limits);
  }
  get findings() {
    return this.blank ? [] : this.check.findingsOf(this.record);
  }

  get unreadable() {
    return this.read.unreadable;
  }
  get testersWord() {
    return this.read.testersWord;
  }
  get otherMethod() {
    return this.judged.otherMethod;
  }
  get readings() {
    return this.judged.readings;
  }
  get finalReading() {
    return this.judged.finalReading;
  }
  get result() {
    return this.judged.result;
  }
  get refused() {
    return this.judged.refused;
  }
  get scaleEnd() {
    return this.judged.scaleEnd;
  }
  private get judged(): JudgedTest {
    return this.fresh ?? this.check.judge(this.read, this.limits);
  }
}
