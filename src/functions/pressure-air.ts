import { pressureAir } from "../methods/pressure-air/pressure-air";
import { fullMixtureAir, mortarAir } from "../methods/pressure-air/sieved-sample";
import { number } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";

/**
 * Air content by the pressure method: gauge reading less the aggregate correction factor, in %. Not for lightweight, slag or very porous aggregate. ASTM C231 / AASHTO T 152.
 * @customfunction AIR.PRESSURE AIR.PRESSURE
 * @param gauge Gauge reading in %.
 * @param factor Aggregate correction factor in %; give 0 only where it was found to be 0.
 * @returns Air content in %, not rounded.
 * @example =FRESH.AIR.PRESSURE(4, 0.3) gives 3.70 [AASHTO re:source, April 2015: 4.0 − 0.3]
 */
export function airPressure(gauge: any[][], factor: any[][]): any[][] {
  return pressureOf(gauge, factor);
}
const pressureOf = cellByCell([number("gauge"), number("factor")], pressureAir);

/**
 * Air content of the full mixture, in %, from a test on a wet-sieved sample. ASTM C231.
 * @customfunction AIR.FULLMIX AIR.FULLMIX
 * @param sieved Air content found in the sieved sample, in %.
 * @param passing Absolute volume of the ingredients that pass the sieve.
 * @param coarse Absolute volume of the aggregate kept on the sieve, in the same unit.
 * @returns Air content in %, not rounded.
 * @example =FRESH.AIR.FULLMIX(6, 20, 5) gives 4.8583 [100 × 6 × 20 / (100 × 25 − 6 × 5)]
 */
export function airFullMix(sieved: any[][], passing: any[][], coarse: any[][]): any[][] {
  return fullMixOf(sieved, passing, coarse);
}
const fullMixOf = cellByCell(
  [number("sieved"), number("passing"), number("coarse")],
  fullMixtureAir,
);

/**
 * Air content of the mortar, in %, from a test on a wet-sieved sample. ASTM C231.
 * @customfunction AIR.MORTAR AIR.MORTAR
 * @param sieved Air content found in the sieved sample, in %.
 * @param passing Absolute volume of the ingredients that pass the sieve.
 * @param mortar Absolute volume of cement, water and fine aggregate among them, in the same unit.
 * @returns Air content in %, not rounded.
 * @example =FRESH.AIR.MORTAR(6, 20, 14) gives 8.3565 [100 × 6 × 20 / (100 × 14 + 6 × 6)]
 */
export function airMortar(sieved: any[][], passing: any[][], mortar: any[][]): any[][] {
  return mortarOf(sieved, passing, mortar);
}
const mortarOf = cellByCell([number("sieved"), number("passing"), number("mortar")], mortarAir);
