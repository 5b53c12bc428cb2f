import type { AlcoholAmount } from "../../methods/volumetric-air/alcohol-correction";
import type { JudgedTest } from "../judged-test";
import { readingsTaken } from "../reading-fields";

/** A reported air content that is not what the record gives, with all that may explain it. */
export interface WrongResult {
  /** Air as reported, %. */
  readonly reported: number;
  /** The readings in the order in which they were taken, %. */
  readonly taken: readonly number[];
  /** The final reading that the method gives, %. */
  readonly reading: number;
  /** The final reading that stands in the sheet, % ; absent when none does. */
  readonly recordedFinal?: number;
  /** Correction for the alcohol, %. */
  readonly subtracted: number;
  /** Calibrated cups, %. */
  readonly cups: number;
  readonly alcohol?: AlcoholAmount;
  /** A correction factor for aggregate, which this method does not know, %. */
  readonly aggregateFactor?: number;
}

/** What the diagnosis looks at in a row; `undefined` for a row without a result or a reported air. */
export function wrongResultOf(row: JudgedTest): WrongResult | undefined {
  const { result, values } = row;
  if (!result || values.air === undefined) return undefined;
  return {
    reported: values.air,
    taken: readingsTaken(row),
    reading: result.reading,
    recordedFinal: values.final,
    subtracted: result.subtracted,
    cups: result.cups,
    alcohol: values.alcohol,
    aggregateFactor: values.aggregateFactor,
  };
}
