import { isIssue, type Issue } from "../measure/issue";
import { exact } from "../measure/rounding";
import { correctedAir } from "../methods/volumetric-air/corrected-air";
import type { BorderlineTest } from "./borderline-test";

/** One step from the meter reading to the reported air content, in % of air. */
export interface ResultStep {
  readonly name: "reading" | "alcohol" | "cups" | "rounding";
  /** What the step adds; negative where it takes away. For the reading, the reading itself. */
  readonly change: number;
  /** The number after the step. The last one is the reported air content. */
  readonly value: number;
  /** Whether the correction for alcohol was read between two rows of its table. */
  readonly interpolated: boolean;
}

/**
 * The way from the final meter reading to the result: reading, correction for alcohol, calibrated
 * cups, rounding. Every step is there, also one that changes nothing.
 *
 * @returns The steps; an issue of `correctedAir`.
 */
export function resultSteps(test: BorderlineTest): readonly ResultStep[] | Issue {
  const result = correctedAir(test, test.step);
  if (isIssue(result)) return result;
  const step = (
    name: ResultStep["name"],
    change: number,
    value: number,
    interpolated = false,
  ): ResultStep => ({
    name,
    change: exact(change),
    value: exact(value),
    interpolated,
  });
  return [
    step("reading", result.reading, result.reading),
    step("alcohol", -result.subtracted, result.reading - result.subtracted, result.interpolated),
    step("cups", result.cups, result.unrounded),
    step("rounding", result.air - result.unrounded, result.air),
  ];
}
