import { isIssue, type Issue } from "../measure/issue";
import { airMethodNamed, type AirMethod } from "../methods/air-method/named-method";
import { alcoholCorrection } from "../methods/volumetric-air/alcohol-correction";
import { notACount } from "../methods/volumetric-air/calibrated-cups";
import { correctedAir } from "../methods/volumetric-air/corrected-air";
import { judgeReadings } from "../methods/volumetric-air/final-reading";
import { notAMeterReading, SCALE_END } from "../methods/volumetric-air/meter-reading";
import type { FieldId } from "../reading/fields";
import type { FieldRecord } from "../reading/record";
import type { SheetReading } from "../reading/sheet-reading";
import type { JudgedTest, Limits } from "./judged-test";

/** The field that holds the only reading which the sheet records; `undefined` where there are more. */
export function singleReadingField(sheet: SheetReading): "first" | "final" | undefined {
  if (sheet.has("second")) return undefined;
  if (sheet.has("final")) return "final";
  return sheet.has("first") ? "first" : undefined;
}

/**
 * Works out what the method makes of one test, as far as its record goes. Why the method refuses a
 * value is kept beside it, for the rules to say.
 *
 * @param read The test as read.
 * @param sheet Which fields there are: a sheet without alcohol is computed without a correction, a
 *   test without its alcohol is not.
 * @param limits Specification limits for the test.
 * @param scaleEnd Where the scale of the meter ends, %.
 */
export function judgeTest(
  read: FieldRecord,
  sheet: SheetReading,
  limits: Limits,
  scaleEnd: number = SCALE_END,
): JudgedTest {
  const { record, blank, values, unreadable, testersWord } = read;
  const otherMethod = otherMethodOf(values.method);
  if (blank || otherMethod)
    return {
      record,
      blank,
      values,
      unreadable,
      testersWord,
      otherMethod,
      refused: {},
      limits,
      scaleEnd,
    };
  const refused: { -readonly [F in FieldId]?: Issue } = {};
  for (const field of READINGS) {
    const reading = values[field];
    const issue = reading === undefined ? undefined : notAMeterReading(reading, scaleEnd);
    if (issue) refused[field] = issue;
  }
  const { cups, alcohol } = values;
  const cupsIssue = cups === undefined ? undefined : notACount(cups);
  if (cupsIssue) refused.cups = cupsIssue;
  const correction = alcohol && alcoholCorrection(alcohol);
  if (isIssue(correction)) refused.alcohol = correction;

  const single = singleReadingField(sheet);
  const readable = !unreadable.second && !unreadable.third;
  const refusedReading = refused.first ?? refused.second ?? refused.third;
  const readings =
    single || values.first === undefined || refusedReading || !readable
      ? undefined
      : judgeReadings(values.first, values.second, values.third);
  const finalReading = single
    ? values[single]
    : readings?.next === "final"
      ? readings.reading
      : undefined;
  const known =
    finalReading !== undefined && !(sheet.has("alcohol") && !alcohol) && !unreadable.cups;
  const air = known ? correctedAir({ reading: finalReading, cups, alcohol, scaleEnd }) : undefined;
  // Readings that decide what the final one has to be leave a recorded one to `final-reading-wrong`.
  if (finalReading !== undefined && values.final !== finalReading) delete refused.final;
  // What is wrong with a value by itself was said above; this is wrong with them together.
  if (isIssue(air) && air.id === "air-below-zero") refused.alcohol = air;
  if (isIssue(air) && air.id === "air-beyond-most") refused.cups = air;
  const result = isIssue(air) ? undefined : air;
  return {
    record,
    blank,
    values,
    unreadable,
    testersWord,
    readings,
    finalReading,
    result,
    refused,
    limits,
    scaleEnd,
  };
}

const READINGS = ["first", "second", "third", "final"] as const;

function otherMethodOf(method: string | undefined): AirMethod | undefined {
  const named = method === undefined ? undefined : airMethodNamed(method);
  return named === "volumetric" ? undefined : named;
}
