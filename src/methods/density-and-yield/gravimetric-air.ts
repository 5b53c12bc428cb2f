import { at, issue, type Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
import { exact } from "../../measure/rounding";
import type { UnitSystem } from "../../measure/unit-system";

/**
 * Air content from the density: by how much the concrete is lighter than it would be without air.
 *
 * Not to be relied on where the aggregate is very porous: its absolute volume is then not known well.
 *
 * @param theoretical Air-free density, lb/ft³ or kg/m³.
 * @param density Density of the fresh concrete, in the same unit.
 * @returns Air, % of the concrete. The issue `density-above-theoretical` or one of `implausible`.
 * @see ASTM C138, gravimetric air content; Kansas DOT KT-20 for the porous aggregate.
 */
export function gravimetricAir(
  theoretical: number,
  density: number,
  system: UnitSystem,
): number | Issue {
  const wrong =
    at("theoretical density", implausible(theoretical, QUANTITIES.density, system)) ??
    at("density", implausible(density, QUANTITIES.density, system));
  if (wrong) return wrong;
  const air = exact(((theoretical - density) / theoretical) * 100);
  if (air < 0) return issue("density-above-theoretical", { density, theoretical });
  return air;
}
