import { FOAM_LIMIT, foamOverLimit as tooMuchFoam } from "../../methods/volumetric-air/validity";
import type { Rule } from "../rule";

/** Too much foam on the neck to read the level. */
export const foamOverLimit: Rule = {
  id: "foam-over-limit",
  weight: "void",
  needs: ["foam"],
  basis:
    "More than two full percent divisions of foam hide the level; the test is repeated with more alcohol (a meter maker's manual, 2019, describing ASTM C173).",
  look({ values: { foam } }) {
    if (foam === undefined || !tooMuchFoam(foam)) return undefined;
    return { field: "foam", values: { foam, limit: FOAM_LIMIT } };
  },
};
