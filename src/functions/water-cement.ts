import { compareWithLimits } from "../acceptance/limits";
import { mostWaterCement } from "../acceptance/water-cement/exposure-limit";
import type { CellValue } from "../measure/cell-value";
import { isIssue, type Issue } from "../measure/issue";
import { numberFromCell } from "../measure/number-from-cell";
import { textFromCell } from "../measure/words-from-cell";
import { notWaterCement, waterCementRatio } from "../methods/water-cement/water-cement";
import { number, optional, setting, type Argument } from "./runner/argument";
import { rowByRow } from "./runner/row-by-row";

/** A limit of w/cm as a number, or the exposure classes that have one. */
const limit: Argument<number> = {
  name: "limit",
  optional: false,
  setting: true,
  read: (cell) => numberOrClasses(cell),
};

/**
 * Ratio of all water to the cementitious material, with what was added on site, and whether it is within its limit. All in one unit of mass, for the same volume; 1 US gal of water is 8.33 lb.
 * @customfunction WATER.CEMENT WATER.CEMENT
 * @param batchWater Water that was batched.
 * @param freeMoisture Water on the surface of the aggregate, below 0 where it takes water in; blank for none.
 * @param addedWater Water added on the way or on site; blank for none.
 * @param cementitious Cement and other cementitious material.
 * @param [limit] Most w/cm: a number, or exposure classes of ACI 318-19 such as "F2" or "F1, S1" (from memory, Table 19.3.2.1).
 * @returns w/cm, not rounded, and "within" or "above"; the second is blank without a limit.
 * @example =FRESH.WATER.CEMENT(250, 30, , 611, 0.5) gives 0.4583, "within" [280 / 611]
 * @example =FRESH.WATER.CEMENT(250, 30, 25, 611, "F2") gives 0.4992, "above" [305 / 611, limit 0.45; from memory, ACI 318-19]
 */
export function waterCement(
  batchWater: any[][],
  freeMoisture: any[][],
  addedWater: any[][],
  cementitious: any[][],
  limit?: any[][],
): any[][] {
  return ratioOf(batchWater, freeMoisture, addedWater, cementitious, limit);
}
const ratioOf = rowByRow(
  [
    number("batch water"),
    optional(number("free moisture")),
    optional(number("added water")),
    number("cementitious"),
    setting(limit),
  ],
  2,
  (batchWater, freeMoisture, addedWater, cementitious, most) => {
    const ratio = waterCementRatio({ batchWater, freeMoisture, addedWater, cementitious });
    if (isIssue(ratio)) return ratio;
    return [ratio, most === undefined ? "" : compareWithLimits(ratio, undefined, most)];
  },
);

function numberOrClasses(cell: CellValue): number | undefined | Issue {
  const read = numberFromCell(cell);
  if (typeof read === "number") return notWaterCement(read) ?? read;
  if (!isIssue(read) || read.id !== "not-a-number") return read;
  const classes = textFromCell(cell);
  return classes === undefined || isIssue(classes) ? classes : mostWaterCement(classes);
}
