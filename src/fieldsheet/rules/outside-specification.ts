import { compareWithLimits } from "../../acceptance/limits";
import { testRule } from "../rule";

/** A valid result that lies outside its limits. */
export const outsideSpecification = testRule({
  id: "outside-specification",
  weight: "doubt",
  needs: [],
  says: ["below-specification", "above-specification"],
  basis:
    "A result on a limit is within; a result outside is decided by a check test on another portion of the same sample (a trade article quoting ASTM C94).",
  look({ state, result, limits: { low, high } }, sheet) {
    if (state !== "valid" || !result) return undefined;
    const verdict = compareWithLimits(result.air, low, high);
    if (verdict === "within") return undefined;
    const limit = verdict === "below" ? low! : high!;
    return {
      field: sheet.has("air") ? "air" : null,
      say: verdict === "below" ? "below-specification" : "above-specification",
      values: { air: result.air, limit },
    };
  },
});
