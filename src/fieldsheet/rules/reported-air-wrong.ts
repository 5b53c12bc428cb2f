import { exact } from "../../measure/rounding";
import type { Rule } from "../rule";

/** The reported air is not what the record gives. */
export const reportedAirWrong: Rule = {
  id: "reported-air-wrong",
  weight: "error",
  needs: ["air"],
  basis:
    "Air content is the final meter reading less the correction for alcohol plus the calibrated cups, reported to the nearest 0.25 % (from memory, ASTM C173 calculation).",
  look({ state, result, values: { air } }) {
    if (state !== "valid" || !result || air === undefined) return undefined;
    if (exact(air - result.air) === 0) return undefined;
    const { reading, subtracted, cups } = result;
    return {
      field: "air",
      values: { reported: air, air: result.air, reading, subtracted, cups },
    };
  },
};
