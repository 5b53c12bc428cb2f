import { calculatedOvenDryDensity } from "../methods/lightweight-density/calculated-oven-dry";
import { equilibriumDensity } from "../methods/lightweight-density/equilibrium";
import {
  measuredEquilibriumDensity,
  measuredOvenDryDensity,
} from "../methods/lightweight-density/measured-on-specimen";
import { number } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";
import { units } from "./runner/units-argument";

/**
 * Oven-dry density of structural lightweight concrete, calculated from the dry masses of a batch; the cementitious material counts 1.2 times for the water that it binds. ASTM C567.
 * @customfunction DENSITY.OVENDRY DENSITY.OVENDRY
 * @param fine Dry mass of the fine aggregate, in lb, or kg in SI.
 * @param coarse Dry mass of the coarse aggregate.
 * @param cementitious Mass of the cementitious material.
 * @param volume Volume of concrete that the batch makes, in ft³, or m³ in SI.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Density in lb/ft³, or kg/m³ in SI.
 * @example =FRESH.DENSITY.OVENDRY(1350, 900, 611, 27) gives 110.49 [(1,350 + 900 + 1.2 × 611) / 27]
 * @example =FRESH.DENSITY.OVENDRY(800, 535, 362, 1, "si") gives 1769.4 [800 + 535 + 1.2 × 362]
 */
export function densityOvenDry(
  fine: any[][],
  coarse: any[][],
  cementitious: any[][],
  volume: any[][],
  units?: any[][],
): any[][] {
  return ovenDryOf(fine, coarse, cementitious, volume, units);
}
const ovenDryOf = cellByCell(
  [number("fine"), number("coarse"), number("cementitious"), number("volume"), units],
  (fine, coarse, cementitious, volume, system) =>
    calculatedOvenDryDensity({ fine, coarse, cementitious, volume }, system),
);

/**
 * Oven-dry density of structural lightweight concrete, measured on a specimen dried in an oven at 110 ± 5 °C. ASTM C567. For a specimen dried in air to constant mass use DENSITY.EQUILIBRIUM.MEASURED.
 * @customfunction DENSITY.OVENDRY.MEASURED DENSITY.OVENDRY.MEASURED
 * @param dried Mass of the oven-dried specimen, in any one unit of mass.
 * @param saturated Its mass saturated with its surface dry.
 * @param suspended Its mass hanging in water.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Density in lb/ft³, or kg/m³ in SI.
 * @example =FRESH.DENSITY.OVENDRY.MEASURED(20.4, 22.9, 11.2) gives 108.63 [20.4 × 62.3 / 11.7]
 * @example =FRESH.DENSITY.OVENDRY.MEASURED(10.9, 11.8, 5.85, "si") gives 1826.4 [10.9 × 997 / 5.95]
 */
export function densityOvenDryMeasured(
  dried: any[][],
  saturated: any[][],
  suspended: any[][],
  units?: any[][],
): any[][] {
  return measuredOf(dried, saturated, suspended, units);
}
const measuredOf = cellByCell(
  [number("dried"), number("saturated"), number("suspended"), units],
  (dried, saturated, suspended, system) =>
    measuredOvenDryDensity({ dried, saturated, suspended }, system),
);

/**
 * Equilibrium density of lightweight concrete, measured on a specimen dried at 50 ± 5 % humidity until its mass changes no more. Nothing is added to it: DENSITY.EQUILIBRIUM estimates the same from the oven-dry density. ASTM C567-11, equations 1, 2.
 * @customfunction DENSITY.EQUILIBRIUM.MEASURED DENSITY.EQUILIBRIUM.MEASURED
 * @param dried Mass of the specimen at equilibrium, in any one unit of mass.
 * @param saturated Its mass saturated with its surface dry, after 24 hours in water.
 * @param suspended Its mass hanging in water.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Density in lb/ft³, or kg/m³ in SI.
 * @example =FRESH.DENSITY.EQUILIBRIUM.MEASURED(21, 22.9, 11.2) gives 111.82 [21 × 62.3 / 11.7]
 * @example =FRESH.DENSITY.EQUILIBRIUM.MEASURED(10.9, 11.8, 5.85, "si") gives 1826.4 [10.9 × 997 / 5.95]
 */
export function densityEquilibriumMeasured(
  dried: any[][],
  saturated: any[][],
  suspended: any[][],
  units?: any[][],
): any[][] {
  return equilibriumMeasuredOf(dried, saturated, suspended, units);
}
const equilibriumMeasuredOf = cellByCell(
  [number("dried"), number("saturated"), number("suspended"), units],
  (dried, saturated, suspended, system) =>
    measuredEquilibriumDensity({ dried, saturated, suspended }, system),
);

/**
 * Approximate equilibrium density of structural lightweight concrete: oven-dry density plus 3 lb/ft³, or 50 kg/m³ in SI. ASTM C567-11. Not for a density that was measured at equilibrium already.
 * @customfunction DENSITY.EQUILIBRIUM DENSITY.EQUILIBRIUM
 * @param ovendry Oven-dry density in lb/ft³, or kg/m³ in SI.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Density in the same unit.
 * @example =FRESH.DENSITY.EQUILIBRIUM(110.5) gives 113.5 [110.5 + 3]
 * @example =FRESH.DENSITY.EQUILIBRIUM(1770, "si") gives 1820 [1,770 + 50]
 */
export function densityEquilibrium(ovendry: any[][], units?: any[][]): any[][] {
  return equilibriumOf(ovendry, units);
}
const equilibriumOf = cellByCell([number("ovendry"), units], equilibriumDensity);
