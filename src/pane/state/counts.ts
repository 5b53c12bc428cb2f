import type { CheckResult } from "../../fieldsheet/check-result";
import { WEIGHTS, type Weight } from "../../fieldsheet/finding";

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

const KNOWN = new WeakMap<CheckResult, Counts>();

/** Counts what a check found, once. Blank rows are no tests. */
export function countsOf(result: CheckResult): Counts {
  const known = KNOWN.get(result) ?? counted(result);
  KNOWN.set(result, known);
  return known;
}

function counted({ results, findings }: CheckResult): Counts {
  const [states, verdicts, weights] = [zeros(STATES), zeros(VERDICTS), zeros(WEIGHTS)];
  for (const { state, specification } of results) {
    if (state !== "") states[state] += 1;
    if (specification) verdicts[specification] += 1;
  }
  for (const { weight } of findings) weights[weight] += 1;
  return { tests: states.valid + states.void + states.incomplete, states, verdicts, weights };
}

function zeros<K extends string>(kinds: readonly K[]) {
  return Object.fromEntries(kinds.map((kind) => [kind, 0])) as Record<K, number>;
}
