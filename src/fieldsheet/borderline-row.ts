import type { BorderlineTest } from "../acceptance/borderline-test";
import type { AlcoholUnit } from "../methods/volumetric-air/alcohol-correction";
import type { DecidedTest } from "./judged-test";

/**
 * The test of a row as it is looked at from all sides; `undefined` where the row gives no result,
 * also because its alcohol was not recorded. A void test is given too: its state says that it does
 * not stand.
 *
 * @param unit Unit of alcohol to begin with where the sheet records none.
 */
export function borderlineTestOf(
  { finalReading, result, values, limits, scaleEnd }: DecidedTest,
  unit: AlcoholUnit = "oz",
): BorderlineTest | undefined {
  if (finalReading === undefined || result === undefined) return undefined;
  return {
    reading: finalReading,
    cups: values.cups,
    alcohol: values.alcohol ?? { amount: 0, unit },
    limits,
    scaleEnd,
  };
}
