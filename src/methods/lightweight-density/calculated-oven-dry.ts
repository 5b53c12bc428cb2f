import { aboveZero, zeroOrMore } from "../../measure/bounds";
import { plausible, QUANTITIES } from "../../measure/plausible";
import type { UnitSystem } from "../../measure/unit-system";

/** Cementitious material binds this share of its own mass in water for good: 1 + 0.2. */
export const CEMENTITIOUS_WITH_BOUND_WATER = 1.2;

/** The dry masses of a batch, lb or kg, and the volume it makes, ft³ or m³. */
export interface DryBatch {
  readonly fine: number;
  readonly coarse: number;
  readonly cementitious: number;
  readonly volume: number;
}

/**
 * Oven-dry density of structural lightweight concrete, calculated from the batch.
 *
 * @returns lb/ft³ or kg/m³.
 * @throws Problem `below-zero`, `not-above-zero` and those of `plausible`.
 * @see ASTM C567, calculated oven-dry density (from memory).
 */
export function calculatedOvenDryDensity(batch: DryBatch, system: UnitSystem): number {
  const mass =
    zeroOrMore(batch.fine, "dry fine aggregate") +
    zeroOrMore(batch.coarse, "dry coarse aggregate") +
    CEMENTITIOUS_WITH_BOUND_WATER * aboveZero(batch.cementitious, "cementitious material");
  return plausible(mass / aboveZero(batch.volume, "volume"), QUANTITIES.density, system);
}
