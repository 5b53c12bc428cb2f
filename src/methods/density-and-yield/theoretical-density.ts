import { notAboveZero } from "../../measure/bounds";
import type { Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
import type { UnitSystem } from "../../measure/unit-system";

/**
 * Density that the concrete would have without air: mass over the absolute volume of the ingredients.
 *
 * @param mass Mass of the ingredients, lb or kg.
 * @param absoluteVolume Sum of their volumes without air, ft³ or m³.
 * @returns lb/ft³ or kg/m³. The issue `not-above-zero` or one of `implausible`.
 * @see ASTM C138-17, theoretical density.
 */
export function theoreticalDensity(
  mass: number,
  absoluteVolume: number,
  system: UnitSystem,
): number | Issue {
  const wrong = notAboveZero(mass, "mass") ?? notAboveZero(absoluteVolume, "absolute volume");
  if (wrong) return wrong;
  const density = mass / absoluteVolume;
  return implausible(density, QUANTITIES.density, system) ?? density;
}
