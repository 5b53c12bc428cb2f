import { aboveZero } from "../../measure/bounds";
import { Problem } from "../../measure/problem";

/** A batch that yields less or more than this share of its design was noted in two units. */
const CAN_BE = [0.5, 2] as const;

/**
 * Yield over the volume that the batch was designed for; above 1 it over-yields.
 *
 * @param yielded Yield of the batch.
 * @param design Volume that it was designed for, in the same unit.
 * @throws Problem `not-above-zero`, `relative-yield-cannot-be`.
 * @see ASTM C138, relative yield (common practice).
 */
export function relativeYield(yielded: number, design: number): number {
  aboveZero(yielded, "yield");
  aboveZero(design, "design volume");
  const relative = yielded / design;
  if (relative < CAN_BE[0] || relative > CAN_BE[1]) {
    throw new Problem("relative-yield-cannot-be", { yielded, design });
  }
  return relative;
}
