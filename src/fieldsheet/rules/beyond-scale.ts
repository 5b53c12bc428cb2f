import { SCALE_END } from "../../methods/volumetric-air/meter-reading";
import { readingsByThemselves } from "../reading-fields";
import type { Rule } from "../rule";

/** A reading that the neck scale need not reach. */
export const beyondScale: Rule = {
  id: "beyond-scale",
  weight: "error",
  needs: [],
  basis:
    "The neck is graduated to at least 9 % of the bowl (Louisiana DOTD TR 202, 2008); a level beyond the scale is brought back with calibrated cups of water, which are counted (a meter maker's manual, 2019, describing ASTM C173).",
  look(row) {
    return readingsByThemselves(row)
      .filter(({ value }) => value > SCALE_END)
      .map(({ field, value }) => ({ field, values: { value, end: SCALE_END } }));
  },
};
