import { airBounds } from "../acceptance/air-bounds";
import { unsoundLimits } from "../acceptance/spec-limits";
import { alcoholFromCell } from "../measure/alcohol";
import type { CellValue } from "../measure/cell-value";
import { at, isIssue, type Issue } from "../measure/issue";
import { numberFromCell } from "../measure/number-from-cell";
import { yesOrNoFromCell } from "../measure/words-from-cell";
import type { AlcoholUnit } from "../methods/volumetric-air/alcohol-correction";
import { cell, number, optional, setting, text } from "./runner/argument";
import { rowByRow } from "./runner/row-by-row";
import { cups } from "./runner/cups-argument";

/**
 * Least and most air content of a test of which not everything was recorded, and the verdict where all between them gives the same: the record stays wrong, but the load is decided. What is missing is taken as the method asks. ASTM C173 / AASHTO T 196.
 * @customfunction AIR.BOUNDS AIR.BOUNDS
 * @param reading Meter reading in %: the final one unless the last argument says otherwise.
 * @param [cups] Calibrated cups of water; blank where it is not known whether there were any.
 * @param [alcohol] Isopropyl alcohol added, as for AIR; blank where it is not known. A number without a unit is tried in each unit.
 * @param [unit] Unit of a number given as alcohol: "pt", "oz", "L" or "mL"; blank where it is not known.
 * @param [low] Low limit in %; blank for none.
 * @param [high] High limit in %; blank for none.
 * @param [final] FALSE where the reading is the first and no second one was recorded; the second then lies within 0.25 % of it.
 * @returns Least and most air content in %, rounded to 0.25, and "within", "below", "above" or blank. The most is blank where cups may have been used, nobody knows how many.
 * @example =FRESH.AIR.BOUNDS(6, 0, , , 4.5, 7.5) gives 5, 6, "within" [6.00 − 0.90, the last row of the table, is 5.10; 6.00 − 0]
 * @example =FRESH.AIR.BOUNDS(7.5, 0, "16 oz", , 4.5, 7.5, FALSE) gives 7.25, 7.75, "" [7.50 ± 0.25 lies on both sides of the limit]
 */
export function airBoundsOf(
  reading: any[][],
  cups?: any[][],
  alcohol?: any[][],
  unit?: any[][],
  low?: any[][],
  high?: any[][],
  final?: any[][],
): any[][] {
  return boundsOf(reading, cups, alcohol, unit, low, high, final);
}
const boundsOf = rowByRow(
  [
    number("reading"),
    optional(cups),
    optional(cell("alcohol")),
    setting(text("unit")),
    setting(number("low")),
    setting(number("high")),
    setting<boolean>({ name: "final", optional: true, setting: true, read: yesOrNoFromCell }),
  ],
  3,
  (reading, cups, alcohol, unit, low, high, final) => {
    const limited = low !== undefined || high !== undefined;
    const wrong = limited ? unsoundLimits({ low, high }, reading) : undefined;
    if (wrong) return wrong;
    const amount = at("alcohol", amountWithUnit(alcohol, unit));
    if (isIssue(amount)) return amount;
    const bounds = airBounds({ reading, cups, alcohol: amount, final }, { low, high });
    if (isIssue(bounds)) return bounds;
    return [bounds.least, bounds.most ?? "", bounds.verdict ?? ""];
  },
);

/** An amount of alcohol, whose unit may be unknown. */
function amountWithUnit(
  given: CellValue | undefined,
  unit: string | undefined,
): { readonly amount: number; readonly unit?: AlcoholUnit } | undefined | Issue {
  if (given === undefined) return undefined;
  const number = unit === undefined ? numberFromCell(given) : undefined;
  if (typeof number === "number") return { amount: number };
  return alcoholFromCell(given, unit);
}
