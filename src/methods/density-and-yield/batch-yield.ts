import { notAboveZero } from "../../measure/bounds";
import { FT3_PER_YD3 } from "../../measure/conversion";
import { at, type Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
import type { UnitSystem } from "../../measure/unit-system";
import type { YieldUnit } from "../../measure/yield-unit";

/** The system of units that goes with a unit of yield. */
export function systemOfYield(unit: YieldUnit): UnitSystem {
  return unit === "m3" ? "si" : "us";
}

/**
 * Volume of concrete that a batch makes: its mass over the density of the fresh concrete.
 *
 * @param batchMass Mass of everything in the batch, lb or kg.
 * @param density Density of the fresh concrete, lb/ft³ or kg/m³.
 * @returns Yield in the unit; a cubic yard is 27 ft³. The issue `not-above-zero` or one of `implausible`.
 * @see ASTM C138, yield; a ready-mix association practice note on yield.
 */
export function batchYield(batchMass: number, density: number, unit: YieldUnit): number | Issue {
  const wrong =
    notAboveZero(batchMass, "mass of the batch") ??
    at("density", implausible(density, QUANTITIES.density, systemOfYield(unit)));
  if (wrong) return wrong;
  return unit === "yd3" ? batchMass / (FT3_PER_YD3 * density) : batchMass / density;
}
