import { belowZero, notAboveZero } from "../../measure/bounds";
import type { Issue } from "../../measure/issue";

/**
 * Cement in a unit of volume of the concrete as it was batched.
 *
 * @param cementMass Mass of cement in the batch.
 * @param yielded Yield of the batch.
 * @returns Mass for each unit of the yield: lb/yd³ from lb and yd³, kg/m³ from kg and m³. The
 *   issue `not-above-zero` or `below-zero`.
 * @see ASTM C138, cement content (common practice).
 */
export function cementContent(cementMass: number, yielded: number): number | Issue {
  const wrong = belowZero(cementMass, "mass of cement") ?? notAboveZero(yielded, "yield");
  return wrong ?? cementMass / yielded;
}
