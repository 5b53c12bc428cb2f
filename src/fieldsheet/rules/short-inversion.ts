import { INVERSION_IN_ALL } from "../../methods/volumetric-air/procedure";
import { testRule } from "../rule";

/** The meter was inverted for too short a time. */
export const shortInversion = testRule({
  id: "short-inversion",
  weight: "doubt",
  needs: ["inversion"],
  says: ["short-inversion"],
  basis:
    "The meter is inverted and shaken for at least 45 s in all and until the concrete is free (a meter maker's manual, 2019, describing ASTM C173); less leaves air in the concrete.",
  look({ values: { inversion } }) {
    if (inversion === undefined || inversion < 0 || inversion >= INVERSION_IN_ALL) return undefined;
    return { field: "inversion", values: { seconds: inversion, least: INVERSION_IN_ALL } };
  },
});
