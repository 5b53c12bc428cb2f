import { yieldUnitFromCell } from "../measure/yield-unit";
import { batchYield } from "../methods/density-and-yield/batch-yield";
import { cementContent } from "../methods/density-and-yield/cement-content";
import { freshDensity } from "../methods/density-and-yield/fresh-density";
import { gravimetricAir } from "../methods/density-and-yield/gravimetric-air";
import { relativeYield } from "../methods/density-and-yield/relative-yield";
import { theoreticalDensity } from "../methods/density-and-yield/theoretical-density";
import { number, type Argument } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";
import { units } from "./runner/units-argument";

/**
 * Density of fresh concrete: mass in the measure over its volume. ASTM C138 / AASHTO T 121.
 * @customfunction DENSITY DENSITY
 * @param full Mass of the measure filled and struck off, in lb, or kg in SI.
 * @param empty Mass of the empty measure, in the same unit.
 * @param volume Volume of the measure in ft³; in SI in litres (1 or more) or m³ (less than 1).
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Density in lb/ft³, or kg/m³ in SI.
 * @example =FRESH.DENSITY(54.1, 18.6, 0.25) gives 142.0 [a concrete field-technician study guide (2026)]
 * @example =FRESH.DENSITY(24.62, 8.3, 7.01, "si") gives 2328.10 [16.32 kg / 7.01 L × 1,000]
 */
export function density(full: any[][], empty: any[][], volume: any[][], units?: any[][]): any[][] {
  return densityOf(full, empty, volume, units);
}
const densityOf = cellByCell(
  [number("full"), number("empty"), number("volume"), units],
  (full, empty, volume, system) => freshDensity({ full, empty, volume }, system),
);

/**
 * Yield of a batch: volume of concrete that it makes. ASTM C138 / AASHTO T 121.
 * @customfunction BATCH.YIELD BATCH.YIELD
 * @param mass Mass of everything in the batch, in lb, or kg in SI.
 * @param density Density of the fresh concrete in lb/ft³, or kg/m³ in SI.
 * @param [unit] Unit of the yield: "ft3", "yd3" or "m3"; "ft3" unless given. "m3" reads kg and kg/m³.
 * @returns Yield in the unit.
 * @example =FRESH.BATCH.YIELD(3900, 144.5) gives 26.990 [3,900 / 144.5]
 * @example =FRESH.BATCH.YIELD(3900, 144.5, "yd3") gives 0.9996 [26.990 / 27]
 */
export function batchYieldFor(mass: any[][], density: any[][], unit?: any[][]): any[][] {
  return batchYieldOf(mass, density, unit);
}
const yieldUnit = {
  name: "unit",
  optional: true,
  setting: true,
  otherwise: "ft3",
  read: yieldUnitFromCell,
} as const satisfies Argument<string>;
const batchYieldOf = cellByCell([number("mass"), number("density"), yieldUnit], batchYield);

/**
 * Relative yield: yield over the design volume. Above 1 the batch makes more than it was designed for. ASTM C138.
 * @customfunction RELATIVE.YIELD RELATIVE.YIELD
 * @param yielded Yield of the batch.
 * @param design Volume that the batch was designed for, in the same unit.
 * @returns Relative yield.
 * @example =FRESH.RELATIVE.YIELD(6.1, 6) gives 1.0167 [6.1 / 6]
 */
export function relativeYieldFor(yielded: any[][], design: any[][]): any[][] {
  return relativeYieldOf(yielded, design);
}
const relativeYieldOf = cellByCell([number("yielded"), number("design")], relativeYield);

/**
 * Theoretical density: density of the concrete without air. ASTM C138.
 * @customfunction DENSITY.THEORETICAL DENSITY.THEORETICAL
 * @param mass Mass of the ingredients, in lb, or kg in SI.
 * @param volume Sum of their absolute volumes, in ft³, or m³ in SI.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Density in lb/ft³, or kg/m³ in SI.
 * @example =FRESH.DENSITY.THEORETICAL(3900, 25.6) gives 152.344 [3,900 / 25.6]
 * @example =FRESH.DENSITY.THEORETICAL(2390, 0.94, "si") gives 2542.55 [2,390 / 0.94]
 */
export function densityTheoretical(mass: any[][], volume: any[][], units?: any[][]): any[][] {
  return theoreticalOf(mass, volume, units);
}
const theoreticalOf = cellByCell([number("mass"), number("volume"), units], theoreticalDensity);

/**
 * Gravimetric air content in %, from the theoretical and the measured density. Not to be relied on with very porous aggregate. ASTM C138.
 * @customfunction AIR.GRAVIMETRIC AIR.GRAVIMETRIC
 * @param theoretical Density without air, in lb/ft³, or kg/m³ in SI.
 * @param density Density of the fresh concrete, in the same unit.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Air content in %, not rounded.
 * @example =FRESH.AIR.GRAVIMETRIC(150, 141) gives 6.00 [9 / 150 × 100]
 * @example =FRESH.AIR.GRAVIMETRIC(2500, 2325, "si") gives 7.00 [175 / 2,500 × 100]
 */
export function airGravimetric(theoretical: any[][], density: any[][], units?: any[][]): any[][] {
  return gravimetricOf(theoretical, density, units);
}
const gravimetricOf = cellByCell([number("theoretical"), number("density"), units], gravimetricAir);

/**
 * Cement content: cement in each unit of volume of the concrete as it was batched. ASTM C138.
 * @customfunction CEMENT.CONTENT CEMENT.CONTENT
 * @param mass Mass of cement in the batch.
 * @param yielded Yield of the batch.
 * @returns Mass for each unit of volume of the yield, such as lb/yd³ or kg/m³.
 * @example =FRESH.CEMENT.CONTENT(4060, 7.1012) gives 571.73 [4,060 lb / 7.1012 yd³]
 */
export function cementContentFor(mass: any[][], yielded: any[][]): any[][] {
  return cementContentOf(mass, yielded);
}
const cementContentOf = cellByCell([number("mass"), number("yielded")], cementContent);
