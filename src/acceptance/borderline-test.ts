import { isIssue, type Issue } from "../measure/issue";
import { correctedAir, type AirInputs } from "../methods/volumetric-air/corrected-air";
import { verdictOn, type SpecLimits, type Verdict } from "./limits";

/** A volumetric air test that is looked at more closely, with the limits it is judged by. */
export interface BorderlineTest extends AirInputs {
  readonly limits: SpecLimits;
  /** Reporting step, %; 0.25 unless given. */
  readonly step?: number;
}

/** What a test gives. */
export interface Outcome {
  /** Reported air content, %. */
  readonly air: number;
  /** Absent without limits. */
  readonly verdict?: Verdict;
}

/** Works out a test and compares it with its limits; the issue of a test that cannot be. */
export function outcomeOf(test: BorderlineTest): Outcome | Issue {
  const result = correctedAir(test, test.step);
  if (isIssue(result)) return result;
  return { air: result.air, verdict: verdictOn(result.air, test.limits) };
}
