import { correctedAir, type AirInputs } from "../methods/volumetric-air/corrected-air";
import { Problem } from "../measure/problem";
import { verdictOn, type SpecLimits, type Verdict } from "./limits";

/** A volumetric air test that is looked at more closely, with the limits it is judged by. */
export interface BorderlineTest extends AirInputs {
  readonly limits: SpecLimits;
  /** Reporting step, %; 0.25 unless given. */
  readonly step?: number;
}

/** What a test gives: air and verdict, or the reason why such a test cannot be. */
export type Outcome =
  | {
      readonly possible: true;
      /** Reported air content, %. */
      readonly air: number;
      /** Absent without limits. */
      readonly verdict?: Verdict;
    }
  | { readonly possible: false; readonly problem: Problem };

/** Works out a test and compares it with its limits. */
export function outcomeOf(test: BorderlineTest): Outcome {
  try {
    const { air } = correctedAir(test, test.step);
    return { possible: true, air, verdict: verdictOn(air, test.limits) };
  } catch (problem) {
    if (problem instanceof Problem) return { possible: false, problem };
    throw problem;
  }
}
