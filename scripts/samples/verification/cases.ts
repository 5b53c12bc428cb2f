import type { FunctionName } from "../formula";
import type { Value } from "../sheet";
import { ORDINARY } from "./ordinary-formulas";

/** One call of a worksheet function: its arguments, and the ordinary formula for the same result. */
export type Case = readonly [name: FunctionName, inputs: readonly Value[], ordinary: string];

/** As many inputs as a case may have. */
export const MOST_INPUTS = 5;

export const CASES: readonly Case[] = [
  ["AIR", [6.25, 0, 48, "oz"], ORDINARY.air],
  ["AIR", [8.5, 3, 32, "oz"], ORDINARY.air],
  ["AIR", [7.75, 1, 64, "oz"], ORDINARY.air],
  ["ALCOHOL.CORRECTION", [39, "oz"], ORDINARY.correction],
  ["ALCOHOL.CORRECTION", [56, "oz"], ORDINARY.correction],
  ["ALCOHOL.CORRECTION", [80, "oz"], ORDINARY.correction],
  ["READING.FINAL", [5.5, 5.75], ORDINARY.finalReading],
  ["READING.FINAL", [5.5, 6.25, 6.25], ORDINARY.finalReading],
  ["READING.NEXT", [5.5, 6.25], ORDINARY.nextReading],
  ["READING.NEXT", [5.5, 6.25, 6.5], ORDINARY.nextReading],
  ["READING.NEXT", [5, 5.5, 6], ORDINARY.nextReading],
  ["ROUND.STEP", [5.125, 0.25], ORDINARY.evenStep],
  ["ROUND.STEP", [5.375, 0.25], ORDINARY.evenStep],
  ["ROUND.STEP", [6025, 50], ORDINARY.evenStep],

  ["DENSITY", [54.1, 18.6, 0.25], ORDINARY.density],
  ["DENSITY", [44.62, 8.41, 0.2494, "us"], ORDINARY.density],
  ["DENSITY", [24.62, 8.3, 7.01, "si"], ORDINARY.densityLitres],
  ["DENSITY", [24.62, 8.3, 0.00701, "si"], ORDINARY.density],
  ["BATCH.YIELD", [3900, 144.5, "ft3"], ORDINARY.quotient],
  ["BATCH.YIELD", [27245, 142.1, "yd3"], ORDINARY.yardYield],
  ["BATCH.YIELD", [2340, 2335, "m3"], ORDINARY.quotient],
  ["RELATIVE.YIELD", [7.1012, 7], ORDINARY.quotient],
  ["RELATIVE.YIELD", [9.85, 10], ORDINARY.quotient],
  ["DENSITY.THEORETICAL", [3900, 25.6], ORDINARY.quotient],
  ["DENSITY.THEORETICAL", [2390, 0.94, "si"], ORDINARY.quotient],
  ["AIR.GRAVIMETRIC", [152.344, 144.5], ORDINARY.gravimetricAir],
  ["AIR.GRAVIMETRIC", [2500, 2350, "si"], ORDINARY.gravimetricAir],
  ["CEMENT.CONTENT", [564, 0.99962], ORDINARY.quotient],
  ["CEMENT.CONTENT", [335, 1.002], ORDINARY.quotient],
  ["DENSITY.OVENDRY", [1350, 900, 611, 27], ORDINARY.ovenDry],
  ["DENSITY.OVENDRY", [800, 535, 362, 1, "si"], ORDINARY.ovenDry],
  ["DENSITY.OVENDRY.MEASURED", [20.4, 22.9, 11.2], ORDINARY.measuredOvenDry],
  ["DENSITY.OVENDRY.MEASURED", [10.9, 11.8, 5.85, "si"], ORDINARY.measuredOvenDryMetric],
  ["DENSITY.EQUILIBRIUM.MEASURED", [21, 22.9, 11.2], ORDINARY.measuredOvenDry],
  ["DENSITY.EXPECTED", [145, 6, 8], ORDINARY.densityByAir],
  ["AIR.EXPECTED", [145, 6, 142], ORDINARY.airByDensity],
  ["DENSITY.EQUILIBRIUM", [110.49], ORDINARY.equilibrium],
  ["DENSITY.EQUILIBRIUM", [1769.4, "si"], ORDINARY.equilibriumMetric],

  ["AIR.PRESSURE", [4, 0.3], ORDINARY.pressureAir],
  ["AIR.PRESSURE", [7.25, 0.35], ORDINARY.pressureAir],
  ["AIR.FULLMIX", [6, 20, 5], ORDINARY.fullMixture],
  ["AIR.FULLMIX", [8, 10, 10], ORDINARY.fullMixture],
  ["AIR.MORTAR", [6, 20, 14], ORDINARY.mortar],
  ["AIR.MORTAR", [8, 10, 5], ORDINARY.mortar],

  ["WATER.DENSITY", [73.4], ORDINARY.water],
  ["WATER.DENSITY", [23, "si"], ORDINARY.waterMetric],
  ["BOWL.VOLUME", [15.573, 73.4], ORDINARY.bowl],
  ["BOWL.VOLUME", [2.1186, 21.1, "si"], ORDINARY.bowlMetric],
  ["CUP.PERCENT", [21.24, 2123.8], ORDINARY.percent],
  ["CUP.PERCENT", [0.0125, 0.245], ORDINARY.percent],
  ["EVAPORATION", [87, 80, 50, 12], ORDINARY.evaporation],
  ["EVAPORATION", [50, 90, 90, 10, "us"], ORDINARY.evaporation],
  ["EVAPORATION", [30, 30, 50, 16, "si"], ORDINARY.evaporationMetric],

  ["AIR.SPECIFIED", [0.75, "F1", 4000], ORDINARY.airF1],
  ["AIR.SPECIFIED", [1.5, "F3", 5500, "ACI 318-19"], ORDINARY.airF3],
  ["AIR.SPECIFIED", [25, "F2", 40, "ACI 318-19", "si"], ORDINARY.airF2Metric],
  ["AIR.SPECIFIED", [0.5, "moderate", null, "ACI 211.1"], ORDINARY.airModerate],
  ["AIR.SPECIFIED", [20, "category 1", null, "CSA A23.1", "si"], ORDINARY.airCategory1],
  ["AIR.SPECIFIED", [16, "XF3", null, "EN 206", "si"], ORDINARY.airLeast],
  ["STRENGTH.REQUIRED", [4000, 420, 18], ORDINARY.required],
  ["STRENGTH.REQUIRED", [6000, 800, 22], ORDINARY.required],
  ["STRENGTH.REQUIRED", [4000, 600, 30, "us"], ORDINARY.required],
  ["STRENGTH.REQUIRED", [40, 5, 27, "si"], ORDINARY.requiredMetric],

  ["SPEC.COMPARE", [7.75, 4.5, 7.5], ORDINARY.compare],
  ["SPEC.COMPARE", [4.5, 4.5, 7.5], ORDINARY.compare],
  ["SPEC.MARGIN", [7.25, 4.5, 7.5], ORDINARY.margin],
  ["SPEC.MARGIN", [4.25, 4.5, 7.5], ORDINARY.margin],
  ["SPEC.CHANCE", [7.25, 4.5, 7.5, 0.28], ORDINARY.chance],
  ["SPEC.ACCEPT", [7.75, 4.5, 7.5], ORDINARY.checkTest],
  ["SPEC.ACCEPT", [7.75, 4.5, 7.5, 7.5], ORDINARY.checkTest],
  ["SPEC.ACCEPT", [7.75, 4.5, 7.5, 8], ORDINARY.checkTest],
  ["AGREEMENT", [5, 6.9, "C173"], ORDINARY.agreement],
  ["AGREEMENT", [5, 7, "C173", "several"], ORDINARY.agreement],
  ["AGREEMENT.LIMIT", [5, 6.9, "C173"], ORDINARY.agreementLimit],
  ["AGREEMENT.LIMIT", [142, 144, "C138", "one"], ORDINARY.agreementLimitDensity],
];

/** Strength tests in order, judged against one specified strength, psi. */
export const STRENGTH_TESTS = [4210, 3920, 4350, 3480, 4600, 3890, 3700, 3450, 4400, 4180] as const;
export const SPECIFIED_STRENGTH = 4000;

/** Companion cylinders of each test, psi. */
export const CYLINDERS: readonly (readonly number[])[] = [
  [4230, 4390, 4310],
  [4360, 4160, 4250],
  [4270, 4390, 4330],
  [3980, 4120, 4050],
];

/** Functions that no ordinary formula stands beside, and why. */
export const WITHOUT_ORDINARY_FORMULA: Readonly<Record<string, string>> = {
  CHECK: "reads a whole table",
  FINDINGS: "reads a whole table",
  SUMMARY: "reads a whole table",
  BIAS: "reads whole columns; checked on worked numbers, a reference library and by simulation",
  "TESTS.DUE": "reads whole columns; checked on worked numbers",
  "BLANK.TEST": "computes nothing; it tells how blank cells come to the functions",
  "REGISTER.STATE": "looks an id up and counts calendar months; checked on worked dates",
  DISPOSITION: "gives words by a rule; checked on a table of cases for each rule",
  "AIR.BOUNDS": "gives three cells; checked on worked numbers and random tests",
  "SPEC.SINGLE": "gives two cells, sums and differences",
  "WATER.CEMENT": "gives two cells, a quotient and a word",
  "LEVEL.STABLE": "looks back over a column from each of its cells",
  "SPEC.LIMITS": "gives two cells, a sum and a difference",
  "SPEC.GUARD": "gives two cells; checked by simulation",
  "CHART.LIMITS": "reads a whole column; checked on published examples",
  "CHART.EWMA": "reads a whole column; checked on published examples",
  "CHART.CUSUM": "reads a whole column; checked on published examples",
  "CHART.SIGNALS": "reads a whole column; checked on published examples",
};
