import { isOver, saidOf } from "../../measure/bounded";
import { FOAM_LIMIT } from "../../methods/volumetric-air/validity";
import { voidRule } from "../rule";

/** Too much foam on the neck to read the level. */
export const foamOverLimit = voidRule({
  id: "foam-over-limit",
  needs: ["foam"],
  says: ["foam-over-limit"],
  basis:
    "More than two full percent divisions of foam hide the level; the test is repeated with more alcohol (a meter maker's manual, 2019, describing ASTM C173).",
  look({ values: { foam } }) {
    if (foam === undefined || !isOver(foam, FOAM_LIMIT)) return undefined;
    return { field: "foam", values: { foam: saidOf(foam), limit: FOAM_LIMIT } };
  },
});
