import { testRule } from "../rule";
import { unreadableAs } from "../unreadable-as";

/** A reading that the neck scale need not reach. */
export const beyondScale = testRule({
  id: "beyond-scale",
  weight: "error",
  needs: [],
  says: ["reading-beyond-scale"],
  basis:
    "The neck is graduated to at least 9 % of the bowl (Louisiana DOTD TR 202, 2008); a level beyond the scale is brought back with calibrated cups of water, which are counted (a meter maker's manual, 2019, describing ASTM C173).",
  look: ({ refused }) => unreadableAs(refused, ["reading-beyond-scale"]),
});
