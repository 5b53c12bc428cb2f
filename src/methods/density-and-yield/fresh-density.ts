import { belowZero, notAboveZero } from "../../measure/bounds";
import { issue, type Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
import { exact } from "../../measure/rounding";
import type { UnitSystem } from "../../measure/unit-system";

/** From this number on a metric volume of a measure is litres: no measure holds a cubic metre. */
const LEAST_LITRES = 1;

/** The weighing of one measure of concrete. */
export interface Weighing {
  /** Mass of the measure filled and struck off, lb or kg. */
  readonly full: number;
  /** Mass of the empty measure, lb or kg. */
  readonly empty: number;
  /** Volume of the measure, ft³; in SI litres or m³, which no measure confuses. */
  readonly volume: number;
}

/**
 * Density of the fresh concrete in the measure: net mass over volume.
 *
 * @returns lb/ft³ or kg/m³. The issue `full-not-heavier`, `not-above-zero`, `below-zero`, or one of
 *   `implausible`.
 * @see ASTM C138 / AASHTO T 121, density (common practice).
 */
export function freshDensity(
  { full, empty, volume }: Weighing,
  system: UnitSystem,
): number | Issue {
  const wrong =
    belowZero(empty, "mass of the empty measure") ?? notAboveZero(volume, "volume of the measure");
  if (wrong) return wrong;
  if (full <= empty) return issue("full-not-heavier", { full, empty });
  const net = exact(full - empty);
  const litres = system === "si" && volume >= LEAST_LITRES;
  const density = litres ? (net * 1000) / volume : net / volume;
  return implausible(density, QUANTITIES.density, system) ?? density;
}
