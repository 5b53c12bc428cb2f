import { notAboveZero } from "../../measure/bounds";
import { issue, type Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
import type { UnitSystem } from "../../measure/unit-system";

/** Density of the water that the specimen hangs in, as the standard rounds it. */
export const WATER_OF_IMMERSION: Readonly<Record<UnitSystem, number>> = { us: 62.3, si: 997 };

/** One specimen weighed three times, in one unit of mass. */
export interface SpecimenMasses {
  readonly dried: number;
  /** Saturated, its surface dry. */
  readonly saturated: number;
  /** Hanging in water. */
  readonly suspended: number;
}

/**
 * Oven-dry density of structural lightweight concrete, measured on a specimen.
 *
 * @returns lb/ft³ or kg/m³. The issue `not-above-zero`, `suspended-not-lighter`, `dried-over-saturated`, or
 *   one of `implausible`.
 * @see ASTM C567, equations 1 and 2.
 */
export function measuredOvenDryDensity(
  { dried, saturated, suspended }: SpecimenMasses,
  system: UnitSystem,
): number | Issue {
  const wrong = notAboveZero(dried, "mass dried") ?? notAboveZero(suspended, "mass in water");
  if (wrong) return wrong;
  if (dried > saturated) return issue("dried-over-saturated", { dried, saturated });
  if (suspended >= saturated) return issue("suspended-not-lighter", { suspended, saturated });
  const density = (dried * WATER_OF_IMMERSION[system]) / (saturated - suspended);
  return implausible(density, QUANTITIES.density, system) ?? density;
}
