import { ROLLING } from "../../methods/volumetric-air/procedure";
import { testRule } from "../rule";

/** The meter was rolled for too short a time. */
export const shortRoll = testRule({
  id: "short-roll",
  weight: "doubt",
  needs: ["roll"],
  says: ["short-roll"],
  basis:
    "The meter is rolled for about a minute each time (a meter maker's manual, 2019, describing ASTM C173); less leaves air in the concrete.",
  look({ values: { roll } }) {
    if (roll === undefined || roll < 0 || roll >= ROLLING) return undefined;
    return { field: "roll", values: { seconds: roll } };
  },
});
