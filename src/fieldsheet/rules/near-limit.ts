import { marginToLimits } from "../../acceptance/margin";
import { GRADUATION } from "../../methods/volumetric-air/meter-reading";
import { testRule } from "../rule";

/** A result inside the limits, but by no more than one graduation of the neck. */
export const nearLimit = testRule({
  id: "near-limit",
  weight: "note",
  needs: [],
  says: ["near-limit", "on-limit"],
  basis:
    "One graduation on the neck, 0.25 %, would decide about the load (our own rule; the graduation from a meter maker's manual, 2019, describing ASTM C173).",
  look({ state, result, limits }, sheet) {
    if (state !== "valid" || !result) return undefined;
    const margin = marginToLimits(result.air, limits);
    if (margin === undefined || margin < 0 || margin > GRADUATION) return undefined;
    return {
      field: sheet.has("air") ? "air" : null,
      say: margin === 0 ? "on-limit" : "near-limit",
      values: { air: result.air, margin },
    };
  },
});
