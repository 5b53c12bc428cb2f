import { judgeStrength } from "../acceptance/strength/accept";
import { requiredStrength } from "../acceptance/strength/required";
import { withinTestDeviation } from "../acceptance/strength/within-test";
import { number } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";
import { orThrow, withoutLoneError } from "./runner/cell-error";
import { companionCylinders } from "./runner/companion-cylinders";
import { strengthSeries } from "./runner/strength-series";
import { units } from "./runner/units-argument";

/**
 * Judges strength tests in the order in which they were made: "accepted", "mean of three too low" (this test and the two before it), "single test too low", or both. ACI 318-19.
 * @customfunction STRENGTH.ACCEPT STRENGTH.ACCEPT
 * @param results One column or row of tests, each the mean of its cylinders, in psi, or MPa in SI. Blanks are skipped.
 * @param specified Specified strength in the same unit; one for all.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns A text for each test.
 * @example =FRESH.STRENGTH.ACCEPT({4600;3490;4600}, 4000) gives "accepted"; "single test too low"; "accepted" [3,490 is under 4,000 − 500; mean 4,230]
 * @example =FRESH.STRENGTH.ACCEPT({36;44;39}, 40, "si") gives "accepted"; "accepted"; "mean of three too low" [0.90 × 40 = 36 is enough; mean 39.7]
 */
export function strengthAccept(results: any[][], specified: any[][], units?: any[][]): any[][] {
  const series = orThrow(strengthSeries(results, specified, units));
  return withoutLoneError(
    series.beside(judgeStrength(series.tests, series.specified, series.system)),
  );
}

/**
 * Required average strength of a mix, from its specified strength and the deviation of the tests on record. ACI 318 and ACI 301, as trade articles on the editions up to ACI 318-19 quote them.
 * @customfunction STRENGTH.REQUIRED STRENGTH.REQUIRED
 * @param specified Specified strength in psi, or MPa in SI.
 * @param deviation Standard deviation of the tests on record, in the same unit.
 * @param tests How many tests the deviation comes from, 15 at least; from few tests it is raised.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns Strength in the same unit, not rounded.
 * @example =FRESH.STRENGTH.REQUIRED(4000, 420, 30) gives 4562.8 [4,000 + 1.34 × 420]
 * @example =FRESH.STRENGTH.REQUIRED(40, 5, 27, "si") gives 47.86 [0.90 × 40 + 2.33 × 1.018 × 5]
 */
export function strengthRequired(
  specified: any[][],
  deviation: any[][],
  tests: any[][],
  units?: any[][],
): any[][] {
  return requiredOf(specified, deviation, tests, units);
}
const requiredOf = cellByCell(
  [number("specified"), number("deviation"), number("tests"), units],
  requiredStrength,
);

/**
 * Within-test standard deviation from the ranges of companion cylinders: mean range over 1.128 for pairs, over 1.693 for triples. ACI 214R.
 * @customfunction STRENGTH.WITHINTEST STRENGTH.WITHINTEST
 * @param cylinders One test in each row, 2 or 3 cylinders beside each other, in one unit. Blank rows are skipped.
 * @returns Standard deviation in the same unit.
 * @example =FRESH.STRENGTH.WITHINTEST({4230,4390;4360,4160;4270,4390}) gives 141.8 [ranges 160, 200 and 120, mean 160; / 1.128]
 */
export function strengthWithinTest(cylinders: any[][]): any[][] {
  return [[withinTestDeviation(orThrow(companionCylinders(cylinders)))]];
}
