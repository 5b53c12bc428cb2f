import * as fieldSheet from "../../src/functions/field-sheet";
import * as volumetricAir from "../../src/functions/volumetric-air";
import {
  CustomFunctionsError,
  customFunctionsFor,
} from "../../src/workbench/functions/custom-functions";
import type { SampleCell, Value } from "./sheet";

// The functions report what is wrong to the host; here the script stands in for it.
Object.assign(globalThis, { CustomFunctions: customFunctionsFor(new Map()) });

const FUNCTIONS = {
  AIR: volumetricAir.air,
  "ALCOHOL.CORRECTION": volumetricAir.alcoholCorrectionFor,
  "READING.FINAL": volumetricAir.readingFinal,
  "READING.NEXT": volumetricAir.readingNext,
  CHECK: fieldSheet.check,
  FINDINGS: fieldSheet.findings,
};

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
export function call(name: keyof typeof FUNCTIONS, ...args: Argument[]): SampleCell[][] {
  const f = `=FRESH.${name}(${args.map(({ text }) => text).join(",")})`;
  const result = resultOf(name, args);
  const spill = [result.length, result[0]!.length] as const;
  const alone = spill[0] * spill[1] === 1;
  return result.map((row, r) =>
    row.map((v, c) => (r > 0 || c > 0 ? { v } : { f, v, ...(!alone && { spill }) })),
  );
}

/** The same for a function that gives one cell. */
export function callForOne(name: keyof typeof FUNCTIONS, ...args: Argument[]): SampleCell {
  return call(name, ...args)[0]![0]!;
}

function resultOf(name: keyof typeof FUNCTIONS, args: readonly Argument[]): Value[][] {
  const implementation = FUNCTIONS[name] as (...tables: unknown[]) => Value[][];
  try {
    return implementation(...args.map(({ cells }) => cells));
  } catch (error) {
    if (error instanceof CustomFunctionsError) return [[null]];
    throw error;
  }
}
