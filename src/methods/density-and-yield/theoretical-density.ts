import { aboveZero } from "../../measure/bounds";
import { plausible, QUANTITIES } from "../../measure/plausible";
import type { UnitSystem } from "../../measure/unit-system";

/**
 * Density that the concrete would have without air: mass over the absolute volume of the ingredients.
 *
 * @param mass Mass of the ingredients, lb or kg.
 * @param absoluteVolume Sum of their volumes without air, ft³ or m³.
 * @returns lb/ft³ or kg/m³.
 * @throws Problem `not-above-zero` and those of `plausible`.
 * @see ASTM C138-17, theoretical density.
 */
export function theoreticalDensity(
  mass: number,
  absoluteVolume: number,
  system: UnitSystem,
): number {
  aboveZero(mass, "mass");
  aboveZero(absoluteVolume, "absolute volume");
  return plausible(mass / absoluteVolume, QUANTITIES.density, system);
}
