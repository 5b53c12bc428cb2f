import { at, type Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
import type { UnitSystem } from "../../measure/unit-system";

/** Moisture that the concrete keeps in ordinary air; each system's own rounded value (ASTM C567-11). */
export const MOISTURE_KEPT: Readonly<Record<UnitSystem, number>> = { us: 3, si: 50 };

/**
 * Approximate equilibrium density of structural lightweight concrete, from the oven-dry density.
 *
 * @param ovenDry lb/ft³ or kg/m³.
 * @returns In the same unit; an issue of `implausible`.
 * @see ASTM C567-11, approximate equilibrium density.
 */
export function equilibriumDensity(ovenDry: number, system: UnitSystem): number | Issue {
  const wrong = at("oven-dry density", implausible(ovenDry, QUANTITIES.density, system));
  return wrong ?? ovenDry + MOISTURE_KEPT[system];
}
