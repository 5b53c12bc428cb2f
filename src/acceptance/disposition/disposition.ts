import { minutesAsClock } from "../../measure/duration";
import { at, issue, type Issue } from "../../measure/issue";
import { exact } from "../../measure/rounding";
import { compareWithLimits, type SpecLimits, type Verdict } from "../limits";
import type { DispositionRule } from "./rules";

/**
 * What is done with the load. "acceptance sample": a preliminary sample decides nothing, and the
 * sample for acceptance does. "hold": the load waits for the person who answers for it.
 */
export type Disposition =
  "accept" | "check test" | "adjust and retest" | "acceptance sample" | "hold" | "reject";

/** At least this many revolutions at mixing speed follow an addition (ASTM C94, trade articles). */
export const REVOLUTIONS_AFTER_ADDITION = 30;

/** What is known of a load besides its limits. */
export interface LoadTests {
  /** First result, in the unit of the limits. */
  readonly first: number;
  /** The result that followed: check test, second test, or the sample after an adjustment. */
  readonly second?: number;
  /** Minutes left of the time to discharge that the ticket allows; not looked at when absent. */
  readonly minutesLeft?: number;
  /** Revolutions left of those that the ticket allows; not looked at when absent. */
  readonly revolutionsLeft?: number;
  /** From how far outside its limits a result is far outside; none is when absent. */
  readonly far?: number;
}

/**
 * Decides on a load by a named rule.
 *
 * @param limits Either may be absent. A result on a limit is within, except for "averaged", where a
 *   result that reaches a limit is acted upon.
 * @param rule "check test" unless given.
 * @returns The decision, or the issue `far-below-zero`, `left-below-zero` or
 *   `minutes-as-clock`.
 * @see DISPOSITION_RULES for what each rule rests on. Holding a result far outside is our own rule.
 */
export function disposition(
  load: LoadTests,
  limits: SpecLimits,
  rule: DispositionRule = "check test",
): Disposition | Issue {
  const wrong = wrongInputOf(load);
  if (wrong) return wrong;
  if (rule === "averaged") return byAverage(load, limits);
  const verdict = compareWithLimits(load.first, limits.low, limits.high);
  return rule === "check test"
    ? byCheckTest(verdict, load, limits)
    : byPreliminarySample(verdict, load, limits);
}

function wrongInputOf({ far = 0, minutesLeft = 0, revolutionsLeft = 0 }: LoadTests) {
  if (far < 0) return at("far", issue("far-below-zero", { value: far }));
  const clock = at("minutes", minutesAsClock(minutesLeft));
  if (clock) return clock;
  if (minutesLeft < 0) return at("minutes", issue("left-below-zero", { value: minutesLeft }));
  if (revolutionsLeft < 0) {
    return at("revolutions", issue("left-below-zero", { value: revolutionsLeft }));
  }
  return undefined;
}

function byCheckTest(verdict: Verdict, load: LoadTests, limits: SpecLimits): Disposition {
  if (verdict === "within") return "accept";
  const { second } = load;
  if (second === undefined)
    return isFarOutside(load.first, limits, load.far) ? "hold" : "check test";
  if (compareWithLimits(second, limits.low, limits.high) !== "within") return "reject";
  // One result far outside and one within cannot both be of this sample.
  return isFarOutside(load.first, limits, load.far) ? "hold" : "accept";
}

function byPreliminarySample(verdict: Verdict, load: LoadTests, limits: SpecLimits): Disposition {
  // The sample for acceptance is judged like any first result: outside, it has a check test.
  if (load.second !== undefined) {
    const sample = { first: load.second, far: load.far };
    return byCheckTest(compareWithLimits(load.second, limits.low, limits.high), sample, limits);
  }
  if (isFarOutside(load.first, limits, load.far)) return "hold";
  if (verdict !== "below") return "acceptance sample";
  return mayBeAdjusted(load) ? "adjust and retest" : "hold";
}

function mayBeAdjusted({ minutesLeft = Infinity, revolutionsLeft = Infinity }: LoadTests): boolean {
  return minutesLeft > 0 && revolutionsLeft >= REVOLUTIONS_AFTER_ADDITION;
}

function byAverage({ first, second, far }: LoadTests, limits: SpecLimits): Disposition {
  if (!reaches(first, limits)) return "accept";
  if (isFarOutside(first, limits, far)) return "hold";
  if (second === undefined) return "check test";
  // The text asks for remedial action then, and does not say that the load is rejected.
  return reaches(exact((first + second) / 2), limits) ? "hold" : "accept";
}

/** Whether a result lies on a limit or outside. */
function reaches(value: number, { low = -Infinity, high = Infinity }: SpecLimits): boolean {
  return exact(value - low) <= 0 || exact(value - high) >= 0;
}

function isFarOutside(
  value: number,
  { low = -Infinity, high = Infinity }: SpecLimits,
  far: number = Infinity,
): boolean {
  return exact(Math.max(low - value, value - high)) > far;
}
