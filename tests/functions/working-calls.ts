import * as airBounds from "../../src/functions/air-bounds";
import * as agreement from "../../src/functions/agreement";
import * as chart from "../../src/functions/control-chart";
import * as density from "../../src/functions/density-and-yield";
import * as densityFromAir from "../../src/functions/density-from-air";
import * as disposition from "../../src/functions/disposition";
import * as evaporation from "../../src/functions/evaporation";
import * as lightweight from "../../src/functions/lightweight-density";
import * as pressure from "../../src/functions/pressure-air";
import * as rounding from "../../src/functions/rounding";
import * as specification from "../../src/functions/specification";
import * as specifiedAir from "../../src/functions/specified-air";
import * as strength from "../../src/functions/strength";
import * as volumetric from "../../src/functions/volumetric-air";
import * as water from "../../src/functions/water-and-apparatus";
import * as waterCement from "../../src/functions/water-cement";

/** An argument: a value, or the cells of a column. */
export type Given = number | string | readonly number[];

/** A worksheet function with arguments that work. A new function needs one row more. */
export type WorkingCall = readonly [
  id: string,
  run: (...given: any[]) => unknown[][],
  ...given: Given[],
];

const SERIES = [6, 6.25, 5.75, 6, 6.5, 6];
export const WORKING_CALLS: readonly WorkingCall[] = [
  ["AGREEMENT", agreement.agreementOfResults, 6, 6.25, "C231", "several"],
  ["AGREEMENT.LIMIT", agreement.agreementLimitOfResults, 6, 6.25, "C231", "several"],
  ["AIR", volumetric.air, 6, 1, 48, "oz", 0.25],
  ["AIR.FULLMIX", pressure.airFullMix, 6, 20, 25],
  ["AIR.GRAVIMETRIC", density.airGravimetric, 152, 144, "us"],
  ["AIR.MORTAR", pressure.airMortar, 6, 20, 14],
  ["AIR.PRESSURE", pressure.airPressure, 4, 0.3],
  ["ALCOHOL.CORRECTION", volumetric.alcoholCorrectionFor, 48, "oz"],
  ["BATCH.YIELD", density.batchYieldFor, 3900, 144.5, "ft3"],
  ["BOWL.VOLUME", water.bowlVolumeFor, 4.67, 70, "us"],
  ["CEMENT.CONTENT", density.cementContentFor, 5640, 7.1],
  ["CHART.CUSUM", chart.chartCusum, SERIES, 6, 0.25, 1],
  ["CHART.EWMA", chart.chartEwma, SERIES, 0.3, 6, 0.25],
  ["CHART.LIMITS", chart.chartLimits, SERIES],
  ["CHART.SIGNALS", chart.chartSignals, SERIES, [5, 6, 7]],
  ["CUP.PERCENT", water.cupPercent, 21.24, 2124],
  ["DENSITY", density.density, 54.1, 18.6, 0.25, "us"],
  ["DENSITY.EQUILIBRIUM", lightweight.densityEquilibrium, 110, "us"],
  ["DENSITY.OVENDRY", lightweight.densityOvenDry, 1350, 900, 611, 27, "us"],
  ["DENSITY.OVENDRY.MEASURED", lightweight.densityOvenDryMeasured, 10.9, 11.8, 5.85, "si"],
  ["DENSITY.THEORETICAL", density.densityTheoretical, 3900, 25.6, "us"],
  ["EVAPORATION", evaporation.evaporationRate, 87, 80, 50, 12, "us"],
  ["LEVEL.STABLE", volumetric.levelStable, [0, 1, 2, 3], [6, 6, 6, 6]],
  ["READING.FINAL", volumetric.readingFinal, 6, 6, 6],
  ["READING.NEXT", volumetric.readingNext, 6, 6, 6],
  ["RELATIVE.YIELD", density.relativeYieldFor, 27.2, 27],
  ["ROUND.STEP", rounding.roundStep, 6.1, 0.25],
  ["SPEC.ACCEPT", specification.acceptByCheckTest, 8, 4.5, 7.5, 7],
  ["AIR.SPECIFIED", specifiedAir.airSpecified, "3/4", "F2", 4000, "ACI 318-19", "us"],
  ["SPEC.CHANCE", specification.chanceWithinSpecification, 7.25, 4.5, 7.5, 0.28, "C231"],
  ["SPEC.COMPARE", specification.compareWithSpecification, 7.25, 4.5, 7.5, 1],
  ["SPEC.GUARD", specification.guardedSpecification, 4.5, 7.5, 0.05, 0.28, "C231"],
  ["SPEC.LIMITS", specification.limitsFromTarget, 6, 1.5, 1],
  ["SPEC.MARGIN", specification.marginToSpecification, 7.25, 4.5, 7.5],
  ["STRENGTH.ACCEPT", strength.strengthAccept, [4500, 4200, 4100], 4000, "us"],
  ["STRENGTH.REQUIRED", strength.strengthRequired, 4000, 420, 30, "us"],
  ["STRENGTH.WITHINTEST", strength.strengthWithinTest, [4500, 4200]],
  ["WATER.DENSITY", water.waterDensityAt, 70, "us"],
  ["AIR.BOUNDS", airBounds.airBoundsOf, 6, 1, 16, "oz", 4.5, 7.5, "yes"],
  ["AIR.EXPECTED", densityFromAir.airExpected, 145, 6, 142],
  ["DENSITY.EXPECTED", densityFromAir.densityExpected, 145, 6, 8],
  ["DENSITY.EQUILIBRIUM.MEASURED", lightweight.densityEquilibriumMeasured, 10.9, 11.8, 5.85, "si"],
  ["DISPOSITION", disposition.dispositionOfLoad, 8, 4.5, 7.5, "check test", 7, 20, 40, 2],
  ["SPEC.SINGLE", disposition.limitsForSingleResult, "air", 4.5, 8.5, "yes"],
  ["WATER.CEMENT", waterCement.waterCement, 250, 30, 25, 611, 0.5],
];
