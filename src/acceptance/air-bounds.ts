import { isIssue, issue, type Issue } from "../measure/issue";
import { exact, roundToStep } from "../measure/rounding";
import {
  alcoholCorrection,
  CORRECTION_TABLE,
  TABLE_END,
  type AlcoholUnit,
} from "../methods/volumetric-air/alcohol-correction";
import { CUP_PERCENT, notACount } from "../methods/volumetric-air/calibrated-cups";
import { REPORTING_STEP } from "../methods/volumetric-air/corrected-air";
import {
  notAMeterReading,
  READINGS_AGREE_WITHIN,
  SCALE_END,
} from "../methods/volumetric-air/meter-reading";
import { compareWithLimits, type SpecLimits, type Verdict } from "./limits";

/** A volumetric air test of which not everything was recorded. */
export interface PartlyKnownTest {
  /** Meter reading, %. */
  readonly reading: number;
  /** False where it is the first reading, and no second one was recorded. */
  readonly final?: boolean;
  /** Absent where it is not known whether any were used. */
  readonly cups?: number;
  /** Absent where it is not known; so may its unit be. */
  readonly alcohol?: { readonly amount: number; readonly unit?: AlcoholUnit };
  /** Where the scale of the meter ends, %; 9 when absent. */
  readonly scaleEnd?: number;
}

/** Between which air contents, %, the result lies. */
export interface AirBounds {
  readonly least: number;
  /** Absent where cups may have been used, nobody knows how many. */
  readonly most?: number;
  /** Where every air content between them gives the same; absent without limits too. */
  readonly verdict?: Verdict;
}

/**
 * Least and most air that a test can have found, when part of its record is missing.
 *
 * What is missing is taken to have been done as the method asks: a second reading that agrees lies
 * within 0.25 % of the first; alcohol is corrected for by nothing to the end of the table; cups are
 * used one by one until the level is on the scale, so that a reading more than a cup below its end
 * means that there were none. An amount of alcohol without a unit is tried in each unit whose table
 * reaches so far.
 *
 * @param test What is known, in % and cups.
 * @param limits Limits of the specification, %; either may be absent.
 * @returns Bounds rounded to 0.25 %, or the issue of a reading, cups or alcohol that cannot be.
 * @see ASTM C173, calculation and Table 1 (as `correctedAir`); the bounds are derived from them.
 */
export function airBounds(
  test: PartlyKnownTest,
  { low, high }: SpecLimits = {},
): AirBounds | Issue {
  const { reading } = test;
  const { scaleEnd = SCALE_END } = test;
  const wrong = notAMeterReading(reading, scaleEnd);
  if (wrong) return wrong;
  const subtracted = correctionBounds(test.alcohol);
  if (isIssue(subtracted)) return subtracted;
  const cups = cupBounds(reading, scaleEnd, test.cups);
  if (isIssue(cups)) return cups;
  const apart = test.final === false ? READINGS_AGREE_WITHIN : 0;
  if (cups.most !== undefined) {
    const air = exact(reading + apart - subtracted.least + cups.most);
    if (air < 0) return issue("air-below-zero", { reading, subtract: subtracted.least, air });
  }
  // Less than no air there is not: the level or the correction cannot have been so.
  const least = Math.max(0, reported(reading - apart - subtracted.most + cups.least));
  const most =
    cups.most === undefined ? undefined : reported(reading + apart - subtracted.least + cups.most);
  return { least, most, verdict: commonVerdict(least, most, low, high) };
}

/** What every air content from the least to the most gives; without a most there is no end to it. */
function commonVerdict(
  least: number,
  most: number = Infinity,
  low?: number,
  high?: number,
): Verdict | undefined {
  if (low === undefined && high === undefined) return undefined;
  const verdict = compareWithLimits(least, low, high);
  return verdict === compareWithLimits(most, low, high) ? verdict : undefined;
}

function reported(air: number): number {
  return roundToStep(exact(air), REPORTING_STEP);
}

interface Between {
  readonly least: number;
  readonly most: number;
}

function correctionBounds(alcohol: PartlyKnownTest["alcohol"]): Between | Issue {
  if (!alcohol) return { least: 0, most: CORRECTION_TABLE.at(-1)!.subtract };
  const { amount, unit } = alcohol;
  const inTable = (["pt", "oz", "L"] as const).filter((each) => amount <= TABLE_END[each]);
  // An amount that no table reaches is said of the longest.
  const units = unit ? [unit] : inTable.length > 0 ? inTable : (["oz"] as const);
  const amounts: number[] = [];
  for (const each of units) {
    const correction = alcoholCorrection({ amount, unit: each });
    if (isIssue(correction)) return correction;
    amounts.push(correction.subtract);
  }
  return { least: Math.min(...amounts), most: Math.max(...amounts) };
}

function cupBounds(
  reading: number,
  scaleEnd: number,
  cups: number | undefined,
): { readonly least: number; readonly most?: number } | Issue {
  if (cups !== undefined) {
    const percent = cups * CUP_PERCENT;
    return notACount(cups) ?? { least: percent, most: percent };
  }
  const wereNeeded = reading > scaleEnd - CUP_PERCENT;
  return wereNeeded ? { least: 0 } : { least: 0, most: 0 };
}
