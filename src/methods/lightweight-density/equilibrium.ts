import { plausible, QUANTITIES } from "../../measure/plausible";
import type { UnitSystem } from "../../measure/unit-system";

/** Moisture that the concrete keeps in ordinary air; each system's own rounded value (ASTM C567-11). */
export const MOISTURE_KEPT: Readonly<Record<UnitSystem, number>> = { us: 3, si: 50 };

/**
 * Approximate equilibrium density of structural lightweight concrete, from the oven-dry density.
 *
 * @param ovenDry lb/ft³ or kg/m³.
 * @throws Problem of `plausible`.
 * @see ASTM C567-11, approximate equilibrium density.
 */
export function equilibriumDensity(ovenDry: number, system: UnitSystem): number {
  return plausible(ovenDry, QUANTITIES.density, system) + MOISTURE_KEPT[system];
}
