import { belowZero, notAboveZero } from "../../measure/bounds";
import type { Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
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
 * @returns lb/ft³ or kg/m³. The issue `below-zero`, `not-above-zero`, or one of `implausible`.
 * @see ASTM C567, calculated oven-dry density (from memory).
 */
export function calculatedOvenDryDensity(batch: DryBatch, system: UnitSystem): number | Issue {
  const { fine, coarse, cementitious, volume } = batch;
  const wrong =
    belowZero(fine, "dry fine aggregate") ??
    belowZero(coarse, "dry coarse aggregate") ??
    notAboveZero(cementitious, "cementitious material") ??
    notAboveZero(volume, "volume");
  if (wrong) return wrong;
  const density = (fine + coarse + CEMENTITIOUS_WITH_BOUND_WATER * cementitious) / volume;
  return implausible(density, QUANTITIES.density, system) ?? density;
}
