import { notAboveZero } from "../../measure/bounds";
import { isIssue, type Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
import type { UnitSystem } from "../../measure/unit-system";
import { waterDensity } from "../water-density/water-density";

/**
 * Volume of a bowl or measure from the water that fills it.
 *
 * @param waterMass lb or kg.
 * @param temperature Of the water, °F or °C.
 * @returns ft³ or L. The issue `not-above-zero`, or one of `waterDensity` and `implausible`.
 * @see ASTM C29, calibration of the measure (common practice).
 */
export function bowlVolume(
  waterMass: number,
  temperature: number,
  system: UnitSystem,
): number | Issue {
  const wrong = notAboveZero(waterMass, "mass of water");
  if (wrong) return wrong;
  const density = waterDensity(temperature, system);
  if (isIssue(density)) return density;
  const volume = (waterMass / density) * (system === "si" ? 1000 : 1);
  return implausible(volume, QUANTITIES.bowl, system) ?? volume;
}
