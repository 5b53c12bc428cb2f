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
 * Oven-dry density of structural lightweight concrete, measured on a specimen dried at 110 ± 5 °C.
 *
 * @returns lb/ft³ or kg/m³. The issue `not-above-zero`, `suspended-not-lighter`, `dried-over-saturated`, or
 *   one of `implausible`.
 * @see ASTM C567, measured oven-dry density (its equations, of the shape of 1 and 2, from memory).
 */
export function measuredOvenDryDensity(masses: SpecimenMasses, system: UnitSystem): number | Issue {
  return densityInWater(masses, system);
}

/**
 * Equilibrium density of structural lightweight concrete, measured on a specimen that was dried at
 * 50 ± 5 % humidity until its mass changed by no more than 0.5 % in 28 days. It is what
 * `equilibriumDensity` estimates, so nothing is added to it.
 *
 * @param masses Dried is the mass at equilibrium, saturated and suspended after 24 h in water.
 * @returns As `measuredOvenDryDensity`.
 * @see ASTM C567-11, equations 1 and 2.
 */
export function measuredEquilibriumDensity(
  masses: SpecimenMasses,
  system: UnitSystem,
): number | Issue {
  return densityInWater(masses, system);
}

function densityInWater(
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
