import { evaporation } from "../methods/evaporation/evaporation";
import { number } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";
import { units } from "./runner/units-argument";

/**
 * Rate at which water evaporates from the surface of fresh concrete. Take care against drying from 0.20 lb/ft²/h (1.0 kg/m²/h) on. The form in SI units is that of Uno (1998) too and no conversion: it reads 4 to 5 % less than the US form would.
 * @customfunction EVAPORATION EVAPORATION
 * @param concrete Temperature of the concrete in °F, or °C in SI.
 * @param air Temperature of the air in the same unit.
 * @param humidity Relative humidity in %, 0 to 100.
 * @param wind Wind speed in mph, or km/h in SI.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Rate in lb/ft²/h, or kg/m²/h in SI; never below 0.
 * @example =FRESH.EVAPORATION(87, 80, 50, 12) gives 0.2435 [(87^2.5 − 0.5 × 80^2.5) × 5.8 / 10⁶; Menzel's equation in the form of Uno (1998), from memory]
 * @example =FRESH.EVAPORATION(30, 30, 50, 16, "si") gives 0.7981 [5 × 0.5 × 48^2.5 × 20 / 10⁶; SI form of Uno (1998), from a page quoting the paper]
 */
export function evaporationRate(
  concrete: any[][],
  air: any[][],
  humidity: any[][],
  wind: any[][],
  units?: any[][],
): any[][] {
  return evaporationOf(concrete, air, humidity, wind, units);
}
const evaporationOf = cellByCell(
  [number("concrete"), number("air"), number("humidity"), number("wind"), units],
  (concrete, air, humidity, wind, system) => evaporation({ concrete, air, humidity, wind }, system),
);
