import { INVERSION_AT_A_TIME } from "../../methods/volumetric-air/procedure";
import { testRule } from "../rule";

/** The meter stayed upside down for too long at a time. */
export const longInversion = testRule({
  id: "long-inversion",
  weight: "doubt",
  needs: ["longestInversion"],
  says: ["long-inversion"],
  basis:
    "The meter stays upside down for at most 5 s at a time, or aggregate jams its neck (a meter maker's manual, 2019, describing ASTM C173).",
  look({ values: { longestInversion } }) {
    if (longestInversion === undefined || longestInversion <= INVERSION_AT_A_TIME) return undefined;
    const values = { seconds: longestInversion, most: INVERSION_AT_A_TIME };
    return { field: "longestInversion", values };
  },
});
