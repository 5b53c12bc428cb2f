import { aboveZero, zeroOrMore } from "../../measure/bounds";

/**
 * Cement in a unit of volume of the concrete as it was batched.
 *
 * @param cementMass Mass of cement in the batch.
 * @param yielded Yield of the batch.
 * @returns Mass for each unit of the yield: lb/yd³ from lb and yd³, kg/m³ from kg and m³.
 * @throws Problem `not-above-zero`, `below-zero`.
 * @see ASTM C138, cement content (common practice).
 */
export function cementContent(cementMass: number, yielded: number): number {
  return zeroOrMore(cementMass, "mass of cement") / aboveZero(yielded, "yield");
}
