import type { AirMethod } from "../methods/air-method/named-method";
import type { CorrectedAir } from "../methods/volumetric-air/corrected-air";
import type { ReadingVerdict } from "../methods/volumetric-air/final-reading";
import type { FieldRecord } from "./record";

/** State of a test; "" for a blank row. */
export type TestState = "valid" | "void" | "incomplete" | "";

/** Specification limits for one test, % air; either may be absent. */
export interface Limits {
  readonly low?: number;
  readonly high?: number;
}

/** One row of a field sheet with what the method makes of it. */
export interface JudgedRow extends FieldRecord {
  /** The method of a row that names another than the volumetric one; such a test is not judged. */
  readonly otherMethod?: AirMethod;
  /** What the readings give; absent when there is none or one cannot be read. */
  readonly readings?: ReadingVerdict;
  /** The final meter reading that the result is worked out from. */
  readonly finalReading?: number;
  /** The result with its steps; absent when it cannot be worked out. Given also for a void test. */
  readonly result?: CorrectedAir;
  readonly limits: Limits;
  /** Known once the rules that decide it have looked; until then "valid". */
  readonly state: TestState;
}
