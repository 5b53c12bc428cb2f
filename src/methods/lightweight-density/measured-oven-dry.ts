import { aboveZero } from "../../measure/bounds";
import { plausible, QUANTITIES } from "../../measure/plausible";
import { Problem } from "../../measure/problem";
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
 * @returns lb/ft³ or kg/m³.
 * @throws Problem `not-above-zero`, `suspended-not-lighter`, `dried-over-saturated` and those of `plausible`.
 * @see ASTM C567, equations 1 and 2.
 */
export function measuredOvenDryDensity(masses: SpecimenMasses, system: UnitSystem): number {
  const { dried, saturated, suspended } = masses;
  aboveZero(dried, "mass dried");
  aboveZero(suspended, "mass in water");
  if (dried > saturated) throw new Problem("dried-over-saturated", { dried, saturated });
  if (suspended >= saturated) throw new Problem("suspended-not-lighter", { suspended, saturated });
  const density = (dried * WATER_OF_IMMERSION[system]) / (saturated - suspended);
  return plausible(density, QUANTITIES.density, system);
}
