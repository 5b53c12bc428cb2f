import { compareWithLimits } from "../../acceptance/limits";
import { roundToStep } from "../../measure/rounding";
import { litres } from "../../measure/volume";
import { CUP_SHARE } from "../../methods/apparatus/meter-tolerances";
import { firstOfEach } from "../first-of-each";
import type { FieldValues } from "../../reading/record";
import { sheetRule } from "../rule";
import { USUAL_BOWLS } from "./bowl-too-small";

/** What calibrated cups hold. */
const USUAL_CUPS = { mL: [5, 200] } as const;

/** A calibrated cup that is not one percent of its bowl. */
export const cupOutOfTolerance = sheetRule({
  id: "cup-out-of-tolerance",
  weight: "doubt",
  needs: ["cupVolume", "bowlVolume"],
  says: ["cup-out-of-tolerance"],
  basis:
    "A calibrated cup holds 1.00 % of the bowl, 0.04 % more or less (from memory, ASTM C173 apparatus).",
  look: ({ all: rows }) =>
    firstOfEach(rows, ({ values }) => shareOutside(values)).map(({ record, found }) => ({
      record,
      field: "cupVolume",
      values: { percent: found, ...CUP_SHARE },
    })),
});

function shareOutside({ cupVolume, bowlVolume }: FieldValues): number | undefined {
  const cup = cupVolume && litres(cupVolume, USUAL_CUPS);
  const bowl = bowlVolume && litres(bowlVolume, USUAL_BOWLS);
  if (!cup || !bowl) return undefined;
  // Compared to the place to which the tolerance is given.
  const percent = roundToStep((cup / bowl) * 100, 0.01);
  const verdict = compareWithLimits(percent, CUP_SHARE.low, CUP_SHARE.high);
  return verdict === "within" ? undefined : percent;
}
