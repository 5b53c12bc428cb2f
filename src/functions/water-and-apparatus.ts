import { bowlVolume } from "../methods/apparatus/bowl-volume";
import { shareOfBowl } from "../methods/apparatus/share-of-bowl";
import { waterDensity } from "../methods/water-density/water-density";
import { number } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";
import { units } from "./runner/units-argument";

/**
 * Density of water by the equation of Tanaka and others (2001), for 0 to 40 °C.
 * @customfunction WATER.DENSITY WATER.DENSITY
 * @param temperature Temperature of the water in °F, or °C in SI.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Density in lb/ft³, or kg/m³ in SI.
 * @example =FRESH.WATER.DENSITY(68) gives 62.316 [998.2067 × 0.0624280]
 * @example =FRESH.WATER.DENSITY(20, "si") gives 998.2067 [Tanaka and others (2001)]
 */
export function waterDensityAt(temperature: any[][], units?: any[][]): any[][] {
  return waterDensityOf(temperature, units);
}
const waterDensityOf = cellByCell([number("temperature"), units], waterDensity);

/**
 * Volume of a bowl or measure from the water that fills it. ASTM C29.
 * @customfunction BOWL.VOLUME BOWL.VOLUME
 * @param mass Mass of the water, in lb, or kg in SI.
 * @param temperature Temperature of the water in °F, or °C in SI.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Volume in ft³, or litres in SI.
 * @example =FRESH.BOWL.VOLUME(15.6, 60) gives 0.2501 [15.6 / 62.366; water of ASTM C29, from memory]
 * @example =FRESH.BOWL.VOLUME(6.985, 23, "si") gives 7.002 [6.985 / 997.54 × 1,000; water of ASTM C29, from memory]
 */
export function bowlVolumeFor(mass: any[][], temperature: any[][], units?: any[][]): any[][] {
  return bowlVolumeOf(mass, temperature, units);
}
const bowlVolumeOf = cellByCell([number("mass"), number("temperature"), units], bowlVolume);

/**
 * Volume of a calibrated cup or canister as % of its bowl. A cup of the volumetric meter is 1.00 ± 0.04 %.
 * @customfunction CUP.PERCENT CUP.PERCENT
 * @param cup Volume of the cup.
 * @param bowl Volume of the bowl, in the same unit.
 * @returns % of the bowl.
 * @example =FRESH.CUP.PERCENT(0.0125, 0.245) gives 5.10 [Iowa DOT I.M. 318, canister of a meter]
 */
export function cupPercent(cup: any[][], bowl: any[][]): any[][] {
  return cupPercentOf(cup, bowl);
}
const cupPercentOf = cellByCell([number("cup"), number("bowl")], shareOfBowl);
