import { MIDDLE_OF_LOAD } from "../../methods/sampling/sampling-times";
import { testRule } from "../rule";

/** A sample of the first or the last tenth of the load. */
export const sampledFromAnEnd = testRule({
  id: "sampled-from-an-end",
  weight: "doubt",
  needs: ["loadShare"],
  anyMethod: true,
  says: ["sampled-from-an-end"],
  basis:
    "A sample for acceptance is taken from the middle of the load, not of the first or the last 10 % (ASTM C172 and C94 as exam pages tell them). A preliminary sample, which decides nothing, may be.",
  look({ values: { loadShare: share } }) {
    if (share === undefined || share < 0 || share > 100) return undefined;
    if (share >= MIDDLE_OF_LOAD.from && share <= MIDDLE_OF_LOAD.to) return undefined;
    return { field: "loadShare", values: { share, ...MIDDLE_OF_LOAD } };
  },
});
