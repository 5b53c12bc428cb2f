import { specifiedAir } from "../acceptance/specified-air/specified-air";
import { aggregateSizeFromCell } from "../measure/aggregate-size";
import { at, isIssue } from "../measure/issue";
import { cell, number, optional, setting, text } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";
import { units } from "./runner/units-argument";

/**
 * Specified total air content in % from the table of a code: of ACI and UFC the value, of CSA the middle of the range, of EN 206 the least, of DIN 1045-2 the least mean. ACI 318-25 was not looked at.
 * @customfunction AIR.SPECIFIED AIR.SPECIFIED
 * @param aggregate Nominal maximum size: 0.75, "3/4", "3/4 in", "19 mm". A number is inches, or mm in SI. EN 206 and UFC do without.
 * @param exposure As the code names it: F1 to F3; none, moderate, severe; category 1 or 2; XF2 to XF4; frost, no frost.
 * @param [strength] Specified strength in psi, or MPa in SI. Above 5,000 psi (35 MPa) ACI 318-19 lets the air be 1.0 % lower.
 * @param [source] "ACI 318-19" unless given; also "ACI 211.1", "CSA A23.1", "EN 206", "DIN 1045-2", "UFC 3-250-04FA".
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Air content in %.
 * @example =FRESH.AIR.SPECIFIED("3/4 in", "F2") gives 6 [ACI 318-19 Table 19.3.3.1, two copies]
 * @example =FRESH.AIR.SPECIFIED(0.75, "F3", 5500) gives 5 [6.0 − 1.0 for a strength over 5,000 psi; ACI 318-19, trade question and answer]
 * @example =FRESH.AIR.SPECIFIED("20 mm", "category 1", , "CSA A23.1", "si") gives 6.5 [middle of 5 to 8; from memory, CSA A23.1]
 */
export function airSpecified(
  aggregate: any[][],
  exposure: any[][],
  strength?: any[][],
  source?: any[][],
  units?: any[][],
): any[][] {
  return specifiedOf(aggregate, exposure, strength, source, units);
}
const specifiedOf = cellByCell(
  [
    optional(cell("aggregate")),
    text("exposure"),
    optional(number("strength")),
    setting(text("source")),
    units,
  ],
  (aggregate, exposure, strength, source, system) => {
    const size = at("aggregate", aggregateSizeFromCell(aggregate ?? null, system));
    if (isIssue(size)) return size;
    return specifiedAir({ aggregate: size, exposure, strength }, source, system);
  },
);
