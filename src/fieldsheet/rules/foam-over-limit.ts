import { FOAM_LIMIT, foamOverLimit as tooMuchFoam } from "../../methods/volumetric-air/validity";
import { voidRule } from "../rule";

/** Too much foam on the neck to read the level. */
export const foamOverLimit = voidRule({
  id: "foam-over-limit",
  needs: ["foam"],
  says: ["foam-over-limit"],
  basis:
    "More than two full percent divisions of foam hide the level; the test is repeated with more alcohol (a meter maker's manual, 2019, describing ASTM C173).",
  look({ values: { foam } }) {
    if (foam === undefined || !tooMuchFoam(foam)) return undefined;
    return { field: "foam", values: { foam, limit: FOAM_LIMIT } };
  },
});
