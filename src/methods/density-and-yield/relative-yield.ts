import { notAboveZero } from "../../measure/bounds";
import { issue, type Issue } from "../../measure/issue";

/** A batch that yields less or more than this share of its design was noted in two units. */
const CAN_BE = [0.5, 2] as const;

/**
 * Yield over the volume that the batch was designed for; above 1 it over-yields.
 *
 * @param yielded Yield of the batch.
 * @param design Volume that it was designed for, in the same unit.
 * @returns The share; the issue `not-above-zero` or `relative-yield-cannot-be`.
 * @see ASTM C138, relative yield (common practice).
 */
export function relativeYield(yielded: number, design: number): number | Issue {
  const wrong = notAboveZero(yielded, "yield") ?? notAboveZero(design, "design volume");
  if (wrong) return wrong;
  const relative = yielded / design;
  const canBe = relative >= CAN_BE[0] && relative <= CAN_BE[1];
  return canBe ? relative : issue("relative-yield-cannot-be", { yielded, design });
}
