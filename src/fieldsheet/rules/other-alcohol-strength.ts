import { ALCOHOL_STRENGTH } from "../../methods/volumetric-air/procedure";
import { exact } from "../../measure/rounding";
import { testRule } from "../rule";

/** Alcohol of a strength for which the correction is not made. */
export const otherAlcoholStrength = testRule({
  id: "other-alcohol-strength",
  weight: "doubt",
  needs: ["alcoholStrength"],
  says: ["other-alcohol-strength"],
  basis:
    "The method and its correction are for isopropyl alcohol of 70 % by volume (common practice).",
  look({ values: { alcoholStrength } }) {
    if (alcoholStrength === undefined || alcoholStrength < 0) return undefined;
    // A cell formatted as a percentage holds 0.7.
    const percent = exact(alcoholStrength <= 1 ? alcoholStrength * 100 : alcoholStrength);
    if (percent === ALCOHOL_STRENGTH) return undefined;
    return { field: "alcoholStrength", values: { percent, usual: ALCOHOL_STRENGTH } };
  },
});
