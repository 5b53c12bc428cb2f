import { LB_FT3_PER_KG_M3 } from "../../measure/conversion";
import { at, type Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
import { celsius } from "../../measure/temperature";
import type { UnitSystem } from "../../measure/unit-system";

/** Coefficients of Tanaka et al. 2001, in °C and kg/m³. */
const A1 = -3.983035;
const A2 = 301.797;
const A3 = 522528.9;
const A4 = 69.34881;
const A5 = 999.97495;

/**
 * Density of water free of air, at ordinary pressure.
 *
 * @param temperature 32 to 104 °F, or 0 to 40 °C: the range of the equation.
 * @returns lb/ft³ or kg/m³; an issue of `implausible`.
 * @see Tanaka et al. 2001 (recommended by the CIPM), Metrologia 38.
 */
export function waterDensity(temperature: number, system: UnitSystem): number | Issue {
  const wrong = at("temperature", implausible(temperature, QUANTITIES.waterTemperature, system));
  if (wrong) return wrong;
  const t = celsius(temperature, system);
  const density = A5 * (1 - ((t + A1) ** 2 * (t + A2)) / (A3 * (t + A4)));
  return system === "us" ? density * LB_FT3_PER_KG_M3 : density;
}
