import type { CheckResult } from "../../fieldsheet/check-result";
import { WEIGHTS, type Weight } from "../../fieldsheet/rule";
import { problemsOf } from "./problems";

/** States and verdicts in the order in which they are shown. */
export const STATES = ["valid", "void", "incomplete"] as const;
export const VERDICTS = ["within", "below", "above"] as const;

/** How many tests and findings there are of each kind. */
export interface Counts {
  readonly tests: number;
  readonly states: Readonly<Record<(typeof STATES)[number], number>>;
  readonly verdicts: Readonly<Record<(typeof VERDICTS)[number], number>>;
  readonly weights: Readonly<Record<Weight, number>>;
}

/** Counts what a check found. Blank rows are no tests. */
export function countsOf({ rows, findings }: CheckResult): Counts {
  const states = tally(STATES, (state) => rows.filter(({ test }) => test === state).length);
  return {
    tests: states.valid + states.void + states.incomplete,
    states,
    verdicts: tally(
      VERDICTS,
      (verdict) => rows.filter(({ specification }) => specification === verdict).length,
    ),
    weights: tally(
      WEIGHTS,
      (weight) => problemsOf(findings).filter(({ finding }) => finding.weight === weight).length,
    ),
  };
}

function tally<K extends string>(kinds: readonly K[], count: (kind: K) => number) {
  return Object.fromEntries(kinds.map((kind) => [kind, count(kind)])) as Record<K, number>;
}
