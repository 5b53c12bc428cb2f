import type { LimitPair, SpecLimits } from "../acceptance/limits";
import type { Issue } from "../measure/issue";
import type { AirMethod } from "../methods/air-method/named-method";
import type { CorrectedAir } from "../methods/volumetric-air/corrected-air";
import type { ReadingVerdict } from "../methods/volumetric-air/final-reading";
import type { FieldId } from "../reading/fields";
import type { FieldRecord } from "../reading/record";

/** Specification limits for one test, % air; either may be absent. */
export interface Limits extends SpecLimits {
  /** What was given for them with the low above the high one, so that nothing is compared with them. */
  readonly crossed?: LimitPair;
}

/** Why the method refuses a value, by the field that holds it. */
export type Refused = Readonly<Partial<Record<FieldId, Issue>>>;

/** One test with what the method makes of it. */
export interface JudgedTest extends FieldRecord {
  /** The method of a test that names another than the volumetric one; such a test is not judged. */
  readonly otherMethod?: AirMethod;
  /** What the readings give; absent when there is none or one cannot be read. */
  readonly readings?: ReadingVerdict;
  /** The final meter reading that the result is worked out from. */
  readonly finalReading?: number;
  /** The result with its steps; absent when it cannot be worked out. Given also for a void test. */
  readonly result?: CorrectedAir;
  /** What the method says is wrong with the values that it was given. */
  readonly refused: Refused;
  readonly limits: Limits;
  /** Where the scale of the meter ends, %. */
  readonly scaleEnd: number;
}

/** State of a test; "" for a blank record. */
export type TestState = "valid" | "void" | "incomplete" | "";

/** One test once it is known whether it stands. */
export interface DecidedTest extends JudgedTest {
  readonly state: TestState;
}
