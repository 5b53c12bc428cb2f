import { expectedAir, expectedDensity } from "../methods/density-and-yield/density-from-air";
import { number } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";

/**
 * Density that the air content alone would make of a mix, everything else unchanged. What a measured density lies beside it is left for moisture, batching or weighing, on lightweight concrete as well.
 * @customfunction DENSITY.EXPECTED DENSITY.EXPECTED
 * @param referenceDensity Density of the mix at a known air content, such as that of the trial batch.
 * @param referenceAir That air content in %.
 * @param air Air content in question in %.
 * @returns Density in the unit of the reference.
 * @example =FRESH.DENSITY.EXPECTED(145, 6, 8) gives 141.915 [145 × 92 / 94]
 * @example =FRESH.DENSITY.EXPECTED(115, 5.5, 3.5) gives 117.434 [115 × 96.5 / 94.5, lightweight]
 */
export function densityExpected(
  referenceDensity: any[][],
  referenceAir: any[][],
  air: any[][],
): any[][] {
  return densityOf(referenceDensity, referenceAir, air);
}
const densityOf = cellByCell(
  [number("reference density"), number("reference air"), number("air")],
  (density, from, air) => expectedDensity({ density, air: from }, air),
);

/**
 * Air content that alone would explain a density, everything else unchanged: the inverse of DENSITY.EXPECTED.
 * @customfunction AIR.EXPECTED AIR.EXPECTED
 * @param referenceDensity Density of the mix at a known air content, such as that of the trial batch.
 * @param referenceAir That air content in %.
 * @param density Density in question, in the unit of the reference.
 * @returns Air content in %.
 * @example =FRESH.AIR.EXPECTED(145, 6, 142) gives 7.945 [100 − 142 × 94 / 145]
 */
export function airExpected(
  referenceDensity: any[][],
  referenceAir: any[][],
  density: any[][],
): any[][] {
  return airOf(referenceDensity, referenceAir, density);
}
const airOf = cellByCell(
  [number("reference density"), number("reference air"), number("density")],
  (reference, air, density) => expectedAir({ density: reference, air }, density),
);
