import { aboveZero } from "../../measure/bounds";
import { plausible, QUANTITIES } from "../../measure/plausible";
import type { UnitSystem } from "../../measure/unit-system";
import { waterDensity } from "../water-density/water-density";

/**
 * Volume of a bowl or measure from the water that fills it.
 *
 * @param waterMass lb or kg.
 * @param temperature Of the water, °F or °C.
 * @returns ft³ or L.
 * @throws Problem `not-above-zero` and those of `plausible`.
 * @see ASTM C29, calibration of the measure (common practice).
 */
export function bowlVolume(waterMass: number, temperature: number, system: UnitSystem): number {
  aboveZero(waterMass, "mass of water");
  const volume = waterMass / waterDensity(temperature, system);
  return plausible(system === "si" ? volume * 1000 : volume, QUANTITIES.bowl, system);
}
