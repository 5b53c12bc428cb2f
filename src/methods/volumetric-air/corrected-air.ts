import { exact, roundToStep } from "../../measure/rounding";
import { Problem } from "../../measure/problem";
import { alcoholCorrection, type AlcoholAmount } from "./alcohol-correction";
import { calibratedCups } from "./calibrated-cups";
import { meterReading } from "./meter-reading";

/** Air is reported to the nearest quarter percent (from memory, ASTM C173 calculation). */
export const REPORTING_STEP = 0.25;

/** What the result of one test is worked out from. */
export interface AirInputs {
  /** Final meter reading, %. */
  readonly reading: number;
  /** Calibrated cups of water added to bring the level on the scale; none when absent. */
  readonly cups?: number;
  /** Alcohol added; no correction when absent. */
  readonly alcohol?: AlcoholAmount;
}

/** The result of one test with the numbers that lead to it, all in % of air. */
export interface CorrectedAir {
  readonly reading: number;
  readonly subtracted: number;
  readonly interpolated: boolean;
  readonly cups: number;
  readonly unrounded: number;
  readonly air: number;
}

/**
 * Air content of the concrete: final meter reading − correction for the alcohol + calibrated cups.
 *
 * @param inputs Reading in %, cups as a count (each is 1.00 % of the bowl), alcohol with its unit.
 * @param step Reporting step, %; 0 leaves the result unrounded.
 * @throws Problem for a reading, cup count or alcohol amount that cannot be, and `air-below-zero`.
 * @see ASTM C173, calculation (from memory).
 */
export function correctedAir(inputs: AirInputs, step: number = REPORTING_STEP): CorrectedAir {
  const reading = meterReading(inputs.reading);
  const cups = calibratedCups(inputs.cups ?? 0);
  const { subtract, interpolated } = inputs.alcohol
    ? alcoholCorrection(inputs.alcohol)
    : { subtract: 0, interpolated: false };
  const unrounded = exact(reading - subtract + cups);
  if (unrounded < 0) throw new Problem("air-below-zero", { reading, subtract, air: unrounded });
  const air = roundToStep(unrounded, step);
  return { reading, subtracted: subtract, interpolated, cups, unrounded, air };
}
