import { compareWithLimits } from "../../acceptance/limits";
import { percentFromShare } from "../../measure/percent-as-share";
import { mayRecordReadings } from "../may-record-readings";
import { testRule } from "../rule";

/** A reported air outside its limits where no reading is in the sheet. */
export const reportedOutside = testRule({
  id: "reported-outside",
  weight: "doubt",
  needs: ["air"],
  says: ["reported-below", "reported-above"],
  basis:
    "As for a result outside its limits; where no reading is in the sheet what is reported stands for it (our own rule).",
  look({ values: { air }, limits: { low, high } }, sheet) {
    if (air === undefined || mayRecordReadings(sheet)) return undefined;
    if (percentFromShare(air) !== undefined) return undefined;
    const verdict = compareWithLimits(air, low, high);
    if (verdict === "within") return undefined;
    const limit = verdict === "below" ? low! : high!;
    const say = verdict === "below" ? "reported-below" : "reported-above";
    return { field: "air", say, values: { air, limit } };
  },
});
