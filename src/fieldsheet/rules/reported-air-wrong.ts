import { percentFromShare } from "../../measure/percent-as-share";
import { exact } from "../../measure/rounding";
import { CORRECTION_TABLE } from "../../methods/volumetric-air/alcohol-correction";
import { REPORTING_STEP, type CorrectedAir } from "../../methods/volumetric-air/corrected-air";
import { roundToStep } from "../../measure/rounding";
import { diagnose } from "../diagnosis/diagnose";
import { wrongResultOf } from "../diagnosis/wrong-result";
import { slipMessages } from "../../messages/english/slips";
import type { Cause } from "../finding";
import { testRule } from "../rule";

const SLIP_SENTENCES = Object.keys(slipMessages) as (keyof typeof slipMessages)[];

/** The reported air is not what the record gives; each slip that explains it is named with it. */
export const reportedAirWrong = testRule({
  id: "reported-air-wrong",
  weight: "error",
  needs: ["air"],
  says: ["reported-air-wrong", "percent-as-share", ...SLIP_SENTENCES],
  basis:
    "Air content is the final meter reading less the correction for alcohol plus the calibrated cups, reported to the nearest 0.25 % (from memory, ASTM C173 calculation).",
  look(row, sheet) {
    const wrong = row.state === "valid" ? wrongResultOf(row) : undefined;
    if (!wrong || exact(wrong.reported - row.result!.air) === 0) return undefined;
    if (!sheet.has("alcohol") && mayBeCorrected(wrong.reported, row.result!)) return undefined;
    const { reported, reading, subtracted, cups } = wrong;
    const percent = percentFromShare(reported);
    // The right result, in a cell with a percentage format.
    if (percent !== undefined && exact(percent - row.result!.air) === 0)
      return { field: "air", say: "percent-as-share", values: { value: reported, percent } };
    const causes = diagnose(wrong).map(({ slip: id, say = id, values }): Cause => {
      return { id, say, values: { reported, ...values } };
    });
    const unexplained: Cause = { id: "unexplained", say: "unexplained", values: { reported } };
    return {
      field: "air",
      values: { reported, air: row.result!.air, reading, subtracted, cups },
      causes: causes.length > 0 ? causes : [unexplained],
    };
  },
});

/** Whether some correction that a sheet without alcohol does not show leads to the reported air. */
function mayBeCorrected(reported: number, { unrounded }: CorrectedAir): boolean {
  const most = CORRECTION_TABLE.at(-1)!.subtract;
  const least = roundToStep(exact(unrounded - most), REPORTING_STEP);
  const onStep = exact(roundToStep(reported, REPORTING_STEP) - reported) === 0;
  return onStep && reported >= least && reported < unrounded;
}
