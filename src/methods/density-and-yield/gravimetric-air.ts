import { plausible, QUANTITIES } from "../../measure/plausible";
import { Problem } from "../../measure/problem";
import { exact } from "../../measure/rounding";
import type { UnitSystem } from "../../measure/unit-system";

/**
 * Air content from the density: by how much the concrete is lighter than it would be without air.
 *
 * Not to be relied on where the aggregate is very porous: its absolute volume is then not known well.
 *
 * @param theoretical Air-free density, lb/ft³ or kg/m³.
 * @param density Density of the fresh concrete, in the same unit.
 * @returns Air, % of the concrete.
 * @throws Problem `density-above-theoretical` and those of `plausible`.
 * @see ASTM C138, gravimetric air content; Kansas DOT KT-20 for the porous aggregate.
 */
export function gravimetricAir(theoretical: number, density: number, system: UnitSystem): number {
  plausible(theoretical, QUANTITIES.density, system);
  plausible(density, QUANTITIES.density, system);
  const air = exact(((theoretical - density) / theoretical) * 100);
  if (air < 0) throw new Problem("density-above-theoretical", { density, theoretical });
  return air;
}
