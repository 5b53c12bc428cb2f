import { isIssue } from "../measure/issue";
import { airMethodNamed, type AirMethod } from "../methods/air-method/named-method";
import { correctedAir } from "../methods/volumetric-air/corrected-air";
import { judgeReadings } from "../methods/volumetric-air/final-reading";
import { SCALE_END } from "../methods/volumetric-air/meter-reading";
import type { FieldRecord } from "../reading/record";
import type { SheetReading } from "../reading/sheet-reading";
import type { JudgedTest, Limits } from "./judged-test";
import { NOTHING_REFUSED, refusedIn, refusedTogether } from "./refused";

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
  const { values, unreadable } = read;
  const otherMethod = otherMethodOf(values.method);
  if (read.blank || otherMethod) {
    return { ...read, otherMethod, refused: NOTHING_REFUSED, limits, scaleEnd };
  }
  const { first, second, third, final, cups, alcohol } = values;
  const refused = refusedIn(values, scaleEnd);
  const single = singleReadingField(sheet);
  const unsure = refused.first ?? refused.second ?? refused.third;
  const unread = unreadable.second ?? unreadable.third;
  const readings =
    single || first === undefined || unsure || unread
      ? undefined
      : judgeReadings(first, second, third);
  const finalReading =
    single === "first"
      ? first
      : single === "final"
        ? final
        : readings?.next === "final"
          ? readings.reading
          : undefined;
  const lacking = (sheet.has("alcohol") && !alcohol) || unreadable.cups;
  const air =
    finalReading === undefined || lacking
      ? undefined
      : correctedAir({ reading: finalReading, cups, alcohol, scaleEnd });
  return {
    record: read.record,
    blank: false,
    values,
    unreadable,
    testersWord: read.testersWord,
    readings,
    finalReading,
    result: isIssue(air) ? undefined : air,
    refused: refusedTogether(refused, finalReading !== undefined && final !== finalReading, air),
    limits,
    scaleEnd,
  };
}

function otherMethodOf(method: string | undefined): AirMethod | undefined {
  const named = method === undefined ? undefined : airMethodNamed(method);
  return named === "volumetric" ? undefined : named;
}
