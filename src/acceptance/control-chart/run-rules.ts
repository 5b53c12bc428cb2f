import { exact } from "../../measure/rounding";
import { LIMIT_DEVIATIONS, type ChartLimits } from "./individuals-limits";

/** Run rules by their own plain names; each one's words are in the catalogue under its id. */
export const RUN_RULES = [
  "beyond-a-limit",
  "two-of-three-near-a-limit",
  "four-of-five-off-the-mean",
  "eight-on-one-side",
  "six-rising",
  "six-falling",
  "fourteen-up-and-down",
] as const;

/** The id of a run rule. */
export type RunRule = (typeof RUN_RULES)[number];

/**
 * The run rules that each point of a control chart completes.
 *
 * A point on a line is not beyond it, and a point on the mean is on neither side. Where a rule
 * counts points of a run, the point that completes the run breaks it, and every further point that
 * keeps it up.
 *
 * @param values Results in their order, blanks already left out.
 * @param limits Limits of the chart; the two sides may differ in width.
 * @returns For each value the rules it breaks, the graver first; an empty list if none.
 * @see NIST/SEMATECH e-Handbook 6.3.2: zones of one, two and three deviations, runs and trends
 *   (common practice; others ask for nine on one side).
 */
export function brokenRunRules(
  values: readonly number[],
  limits: ChartLimits,
): readonly (readonly RunRule[])[] {
  const offsets = values.map((value) => deviationsFromMean(value, limits));
  const steps = values.map((value, i) => (i === 0 ? 0 : Math.sign(exact(value - values[i - 1]!))));
  return values.map((_, i) => RUN_RULES.filter((rule) => BREAKS[rule](offsets, steps, i)));
}

/** Whether the point at a position breaks a rule. */
type Breaks = (offsets: readonly number[], steps: readonly number[], at: number) => boolean;

const BREAKS: Readonly<Record<RunRule, Breaks>> = {
  "beyond-a-limit": (offsets, _, at) => Math.abs(offsets[at]!) > LIMIT_DEVIATIONS,
  "two-of-three-near-a-limit": (offsets, _, at) => manyBeyond(offsets, at, 2, 3, 2),
  "four-of-five-off-the-mean": (offsets, _, at) => manyBeyond(offsets, at, 4, 5, 1),
  "eight-on-one-side": (offsets, _, at) => manyBeyond(offsets, at, 8, 8, 0),
  // Six points in one direction are five steps between them, fourteen points thirteen.
  "six-rising": (_, steps, at) => everyStep(steps, at, 5, (step) => step > 0),
  "six-falling": (_, steps, at) => everyStep(steps, at, 5, (step) => step < 0),
  "fourteen-up-and-down": (_, steps, at) =>
    everyStep(steps, at, 13, (step, before) => step !== 0 && step !== before),
};

function deviationsFromMean(value: number, { lower, mean, upper }: ChartLimits): number {
  const offset = exact(value - mean);
  if (offset === 0) return 0;
  const side = offset > 0 ? upper - mean : mean - lower;
  return exact((offset / side) * LIMIT_DEVIATIONS);
}

/** Whether this point and enough of the last few lie beyond so many deviations on its side. */
function manyBeyond(
  offsets: readonly number[],
  at: number,
  enough: number,
  ofLast: number,
  deviations: number,
): boolean {
  const side = Math.sign(offsets[at]!);
  const beyond = (offset: number) => offset * side > deviations;
  const last = offsets.slice(Math.max(0, at + 1 - ofLast), at + 1);
  return beyond(offsets[at]!) && last.filter(beyond).length >= enough;
}

/** Whether each of the last steps, `count` of them, passes a test that also sees the one before. */
function everyStep(
  steps: readonly number[],
  at: number,
  count: number,
  passes: (step: number, before: number | undefined) => boolean,
): boolean {
  const last = steps.slice(Math.max(0, at + 1 - count), at + 1);
  return last.length === count && last.every((step, i) => passes(step, last[i - 1]));
}
