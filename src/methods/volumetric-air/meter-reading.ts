import { issue, type Issue } from "../../measure/issue";
import { percentFromShare } from "../../measure/percent-as-share";
import { exact } from "../../measure/rounding";

/** Readings are taken to the nearest quarter percent (meter maker's manual, 2019, describing C173). */
export const GRADUATION = 0.25;

/**
 * The neck scale reaches at least to here, in % of the bowl (Louisiana DOTD TR 202, 2008). The scale of a
 * meter may be longer, and where it is, that is said.
 */
export const SCALE_END = 9;

/** Two readings agree when they differ by no more than this, in % of air; exactly this is agreement. */
export const READINGS_AGREE_WITHIN = 0.25;

/** Whether two levels on the neck agree. */
export function readingsAgree(one: number, other: number): boolean {
  return exact(Math.abs(one - other)) <= READINGS_AGREE_WITHIN;
}

/** Whether a reading lies on a graduation of the quarter-percent grid. */
export function onGraduation(reading: number): boolean {
  return Number.isInteger(exact(reading / GRADUATION));
}

/** The graduations below and above a reading between two of them. */
export function nearestGraduations(reading: number): { below: number; above: number } {
  const below = Math.floor(reading / GRADUATION) * GRADUATION;
  return { below, above: below + GRADUATION };
}

/**
 * What is wrong with a meter reading, before any correction or cups: the issue `reading-negative`,
 * `reading-beyond-scale` or `reading-as-share`. A reading between two graduations was estimated; it is
 * taken as it was written.
 *
 * @param reading Meter reading in %.
 * @param scaleEnd Where the scale of the neck ends, %.
 */
export function notAMeterReading(reading: number, scaleEnd = SCALE_END): Issue | undefined {
  if (reading < 0) return issue("reading-negative", { value: reading });
  if (reading > scaleEnd) return issue("reading-beyond-scale", { value: reading, end: scaleEnd });
  const percent = percentFromShare(reading);
  return percent ? issue("reading-as-share", { value: reading, percent }) : undefined;
}
