import { isIssue, type Issue } from "../measure/issue";
import { alcoholCorrection } from "../methods/volumetric-air/alcohol-correction";
import { notACount } from "../methods/volumetric-air/calibrated-cups";
import type { CorrectedAir } from "../methods/volumetric-air/corrected-air";
import { notAMeterReading } from "../methods/volumetric-air/meter-reading";
import type { FieldValues } from "../reading/record";
import type { Refused } from "./judged-test";

export const NOTHING_REFUSED: Refused = Object.freeze({});

/** Why the method refuses values, each by itself. */
export function refusedIn(values: FieldValues, scaleEnd: number): Refused {
  const { cups, alcohol } = values;
  const ofReading = (reading: number | undefined) =>
    reading === undefined ? undefined : notAMeterReading(reading, scaleEnd);
  const [first, second] = [ofReading(values.first), ofReading(values.second)];
  const [third, final] = [ofReading(values.third), ofReading(values.final)];
  const count = cups === undefined ? undefined : notACount(cups);
  const correction = alcohol && alcoholCorrection(alcohol);
  const amount = isIssue(correction) ? correction : undefined;
  const any = first ?? second ?? third ?? final ?? count ?? amount;
  return any ? { first, second, third, final, cups: count, alcohol: amount } : NOTHING_REFUSED;
}

/**
 * The same with what is wrong with values together.
 *
 * @param finalIsOther Whether readings decide what the final one has to be, and it is not the recorded
 *   one; that is left to the rule of a wrong final reading.
 * @param air The result, or why there is none.
 */
export function refusedTogether(
  refused: Refused,
  finalIsOther: boolean,
  air: CorrectedAir | Issue | undefined,
): Refused {
  const alone = finalIsOther && refused.final ? { ...refused, final: undefined } : refused;
  if (!isIssue(air)) return alone;
  if (air.id === "air-below-zero") return { ...alone, alcohol: air };
  return air.id === "air-beyond-most" ? { ...alone, cups: air } : alone;
}
