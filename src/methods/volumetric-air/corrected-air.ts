import { at, issue, isIssue, type Issue } from "../../measure/issue";
import { differenceAsShare } from "../../measure/percent-as-share";
import { exact, notAStep, roundToStep } from "../../measure/rounding";
import { alcoholCorrection, type AlcoholAmount } from "./alcohol-correction";
import { CUP_PERCENT, notACount } from "./calibrated-cups";
import { notAMeterReading } from "./meter-reading";

/** Air is reported to the nearest quarter percent (from memory, ASTM C173 calculation). */
export const REPORTING_STEP = 0.25;

/** No concrete that this method is for holds more air than this, %: our own limit, well beyond any. */
export const MOST_AIR = 30;

const NOTHING_SUBTRACTED = { subtract: 0, interpolated: false };

/** What the result of one test is worked out from. */
export interface AirInputs {
  /** Final meter reading, %. */
  readonly reading: number;
  /** Calibrated cups of water added to bring the level on the scale; none when absent. */
  readonly cups?: number;
  /** Alcohol added; no correction when absent. */
  readonly alcohol?: AlcoholAmount;
  /** Where the scale of the meter ends, %; 9 when absent. */
  readonly scaleEnd?: number;
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

/** Between these steps, %, a result of air may be reported: a test tells no less and no more (our own bounds). */
const REPORTED_TO = [0.01, 1] as const;

/**
 * Air content of the concrete: final meter reading − correction for the alcohol + calibrated cups.
 *
 * @param inputs Reading in %, cups as a count (each is 1.00 % of the bowl), alcohol with its unit.
 * @param step Reporting step, %; 0 leaves the result unrounded.
 * @returns The result with its steps; the issue of a reading, cups, alcohol or step that cannot be, in its
 *   place, `air-below-zero` or, with cups, `air-beyond-most`.
 * @see ASTM C173, calculation (from memory).
 */
export function correctedAir(
  { reading, cups: count = 0, alcohol, scaleEnd }: AirInputs,
  step: number = REPORTING_STEP,
): CorrectedAir | Issue {
  const wrong =
    at("reading", notAMeterReading(reading, scaleEnd)) ??
    at("cups", notACount(count)) ??
    at("step", notAStep(step) ?? notAReportingStep(step));
  if (wrong) return wrong;
  const correction = alcohol ? alcoholCorrection(alcohol) : NOTHING_SUBTRACTED;
  if (isIssue(correction)) return at("alcohol", correction);
  const { subtract, interpolated } = correction;
  const cups = count * CUP_PERCENT;
  const unrounded = exact(reading - subtract + cups);
  if (unrounded < 0) return issue("air-below-zero", { reading, subtract, air: unrounded });
  if (unrounded > MOST_AIR) {
    return at("cups", issue("air-beyond-most", { cups: count, air: unrounded, most: MOST_AIR }));
  }
  const air = roundToStep(unrounded, step);
  return { reading, subtracted: subtract, interpolated, cups, unrounded, air };
}

function notAReportingStep(step: number): Issue | undefined {
  const [least, most] = REPORTED_TO;
  if (step === 0 || (step >= least && step <= most)) return undefined;
  return differenceAsShare(step) ?? issue("step-not-reported", { value: step, least, most });
}
