import * as airBounds from "../../src/functions/air-bounds";
import * as agreement from "../../src/functions/agreement";
import * as bias from "../../src/functions/bias";
import * as blankTest from "../../src/functions/blank-test";
import * as controlChart from "../../src/functions/control-chart";
import * as densityAndYield from "../../src/functions/density-and-yield";
import * as densityFromAir from "../../src/functions/density-from-air";
import * as disposition from "../../src/functions/disposition";
import * as evaporation from "../../src/functions/evaporation";
import * as fieldSheet from "../../src/functions/field-sheet";
import * as lightweightDensity from "../../src/functions/lightweight-density";
import * as pressureAir from "../../src/functions/pressure-air";
import * as register from "../../src/functions/register";
import * as rounding from "../../src/functions/rounding";
import * as specification from "../../src/functions/specification";
import * as specifiedAir from "../../src/functions/specified-air";
import * as strength from "../../src/functions/strength";
import * as summary from "../../src/functions/summary";
import * as testsDue from "../../src/functions/tests-due";
import * as volumetricAir from "../../src/functions/volumetric-air";
import * as waterAndApparatus from "../../src/functions/water-and-apparatus";
import * as waterCement from "../../src/functions/water-cement";
import {
  CustomFunctionsError,
  customFunctionsFor,
} from "../../src/workbench/functions/custom-functions";
import type { SampleCell, Value } from "./sheet";

// The functions report what is wrong to the host; here the script stands in for it.
Object.assign(globalThis, { CustomFunctions: customFunctionsFor(new Map()) });

/** The worksheet functions, by their ids. */
export const FUNCTIONS = {
  AIR: volumetricAir.air,
  "ALCOHOL.CORRECTION": volumetricAir.alcoholCorrectionFor,
  "READING.FINAL": volumetricAir.readingFinal,
  "READING.NEXT": volumetricAir.readingNext,
  "LEVEL.STABLE": volumetricAir.levelStable,
  CHECK: fieldSheet.check,
  FINDINGS: fieldSheet.findings,
  "ROUND.STEP": rounding.roundStep,
  DENSITY: densityAndYield.density,
  "BATCH.YIELD": densityAndYield.batchYieldFor,
  "RELATIVE.YIELD": densityAndYield.relativeYieldFor,
  "DENSITY.THEORETICAL": densityAndYield.densityTheoretical,
  "AIR.GRAVIMETRIC": densityAndYield.airGravimetric,
  "CEMENT.CONTENT": densityAndYield.cementContentFor,
  "DENSITY.OVENDRY": lightweightDensity.densityOvenDry,
  "DENSITY.OVENDRY.MEASURED": lightweightDensity.densityOvenDryMeasured,
  "DENSITY.EQUILIBRIUM": lightweightDensity.densityEquilibrium,
  "DENSITY.EQUILIBRIUM.MEASURED": lightweightDensity.densityEquilibriumMeasured,
  "DENSITY.EXPECTED": densityFromAir.densityExpected,
  "AIR.EXPECTED": densityFromAir.airExpected,
  "AIR.BOUNDS": airBounds.airBoundsOf,
  DISPOSITION: disposition.dispositionOfLoad,
  "SPEC.SINGLE": disposition.limitsForSingleResult,
  BIAS: bias.bias,
  SUMMARY: summary.summary,
  "TESTS.DUE": testsDue.testsDueFor,
  "BLANK.TEST": blankTest.blankTest,
  "REGISTER.STATE": register.registerStateOf,
  "WATER.CEMENT": waterCement.waterCement,
  "AIR.PRESSURE": pressureAir.airPressure,
  "AIR.FULLMIX": pressureAir.airFullMix,
  "AIR.MORTAR": pressureAir.airMortar,
  "WATER.DENSITY": waterAndApparatus.waterDensityAt,
  "BOWL.VOLUME": waterAndApparatus.bowlVolumeFor,
  "CUP.PERCENT": waterAndApparatus.cupPercent,
  EVAPORATION: evaporation.evaporationRate,
  "AIR.SPECIFIED": specifiedAir.airSpecified,
  "STRENGTH.ACCEPT": strength.strengthAccept,
  "STRENGTH.REQUIRED": strength.strengthRequired,
  "STRENGTH.WITHINTEST": strength.strengthWithinTest,
  "SPEC.LIMITS": specification.limitsFromTarget,
  "SPEC.COMPARE": specification.compareWithSpecification,
  "SPEC.MARGIN": specification.marginToSpecification,
  "SPEC.CHANCE": specification.chanceWithinSpecification,
  "SPEC.GUARD": specification.guardedSpecification,
  "SPEC.ACCEPT": specification.acceptByCheckTest,
  AGREEMENT: agreement.agreementOfResults,
  "AGREEMENT.LIMIT": agreement.agreementLimitOfResults,
  "CHART.LIMITS": controlChart.chartLimits,
  "CHART.EWMA": controlChart.chartEwma,
  "CHART.CUSUM": controlChart.chartCusum,
  "CHART.SIGNALS": controlChart.chartSignals,
};

/** The id of a worksheet function. */
export type FunctionName = keyof typeof FUNCTIONS;

/** An argument as it stands in the formula, and the cells that it stands for. */
export interface Argument {
  readonly text: string;
  readonly cells: readonly (readonly Value[])[];
}

/** A text in the formula itself. */
export function quoted(text: string): Argument {
  return { text: `"${text}"`, cells: [[text]] };
}

/**
 * A formula that calls one worksheet function, with the result that the function itself gives.
 *
 * @returns The cell with the formula, and the cells over which its result spreads, that one included.
 */
export function call(name: FunctionName, ...args: Argument[]): SampleCell[][] {
  const f = `=FRESH.${name}(${args.map(({ text }) => text).join(",")})`;
  const result = resultOf(name, args);
  if (typeof result === "string") return [[{ f, v: null, error: result }]];
  const spill = [result.length, result[0]!.length] as const;
  const alone = spill[0] * spill[1] === 1;
  return result.map((row, r) =>
    row.map((v, c) => (r > 0 || c > 0 ? { v } : { f, v, ...(!alone && { spill }) })),
  );
}

/** The same for a function that gives one cell. */
export function callForOne(name: FunctionName, ...args: Argument[]): SampleCell {
  return call(name, ...args)[0]![0]!;
}

/** The cells that a function gives, or the error that it puts into its cell. */
function resultOf(name: FunctionName, args: readonly Argument[]): Value[][] | string {
  const implementation = FUNCTIONS[name] as (...tables: unknown[]) => Value[][];
  try {
    return implementation(...args.map(({ cells }) => cells));
  } catch (error) {
    if (error instanceof CustomFunctionsError) return error.code;
    throw error;
  }
}
