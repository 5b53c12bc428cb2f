import { isIssue, type Issue } from "../measure/issue";
import type { BorderlineTest } from "./borderline-test";
import { chanceWithin } from "./chance-within";
import { checkTestDecision, type AcceptanceDecision } from "./check-test";
import { verdictOn, type Verdict } from "./limits";
import { marginToLimits } from "./margin";
import { outcomeGrid, type GridRow } from "./outcome-grid";
import { deviationOfResult } from "./deviation-of-result";
import { USUAL_PRECISION } from "./precision";
import type { PublishedPrecision } from "./precision-table";
import { resultSteps, type ResultStep } from "./result-steps";
import { unsoundLimits } from "./spec-limits";
import { turningPoints, type TurningPoint } from "./turning-points";

/** How sure a result is. */
export interface Certainty {
  /** Chance that the true air content lies within the limits, 0 to 1. */
  readonly chance: number;
  /** Standard deviation that it rests on, %. */
  readonly deviation: number;
  /** Whose published precision it is and how far to trust it; absent for the user's own deviation. */
  readonly published?: { readonly method: string; readonly source: PublishedPrecision["source"] };
}

/** All there is to say about a borderline result. */
export interface WhatIf {
  readonly test: BorderlineTest;
  readonly steps: readonly ResultStep[];
  /** Reported air content, %. */
  readonly air: number;
  /** The rest is absent without limits. */
  readonly verdict?: Verdict;
  /** Distance to the nearer limit, %; negative outside. */
  readonly margin?: number;
  readonly certainty?: Certainty;
  /** What the check-test rule asks for. */
  readonly decision?: AcceptanceDecision;
  readonly grid: readonly GridRow[];
  /** How much it would take to change the verdict. */
  readonly turningPoints: readonly TurningPoint[];
}

/** What the user may add to a test. */
export interface WhatIfOptions {
  /** Standard deviation of one result, %; the published one of C173 when absent. */
  readonly deviation?: number;
  /** Result of the check test, %. */
  readonly check?: number;
}

/**
 * Looks at a volumetric air test from all sides: the result step by step, how near a limit it lies,
 * what neighbouring readings, cups and alcohol would have given, what comes next.
 *
 * @param test Final meter reading in %, cups, alcohol, limits in %.
 * @returns The issue of `correctedAir` when the test itself gives no result; of `unsoundLimits` when the
 *   limits cannot be; `deviation-not-above-zero`.
 */
export function whatIf(
  test: BorderlineTest,
  { deviation, check }: WhatIfOptions = {},
): WhatIf | Issue {
  const steps = resultSteps(test);
  if (isIssue(steps)) return steps;
  const air = steps.at(-1)!.value;
  const verdict = verdictOn(air, test.limits);
  const looked = { test, steps, air, grid: outcomeGrid(test), turningPoints: turningPoints(test) };
  if (verdict === undefined) return looked;
  const certainty = unsoundLimits(test.limits) ?? certaintyOf(air, test, deviation);
  if (isIssue(certainty)) return certainty;
  return {
    ...looked,
    verdict,
    margin: marginToLimits(air, test.limits),
    certainty,
    decision: checkTestDecision(air, test.limits, check),
  };
}

function certaintyOf(air: number, { limits }: BorderlineTest, given?: number): Certainty | Issue {
  const deviationAt = deviationOfResult(given);
  if (isIssue(deviationAt)) return deviationAt;
  const deviation = deviationAt(air);
  if (isIssue(deviation)) return deviation;
  const chance = chanceWithin(air, limits, deviation);
  if (given !== undefined) return { chance, deviation };
  const { names, source } = USUAL_PRECISION;
  return { chance, deviation, published: { method: names[0], source } };
}
