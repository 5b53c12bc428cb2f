import { testRule } from "../rule";
import { unreadableAs } from "../unreadable-as";

const SAYS = ["reading-off-grid", "reading-as-share"] as const;

/** A reading between two graduations. */
export const offGridReading = testRule({
  id: "off-grid-reading",
  weight: "error",
  needs: [],
  says: SAYS,
  basis:
    "The bottom of the meniscus is read to the nearest 0.25 % (a meter maker's manual, 2019, describing ASTM C173); a reading off that grid was estimated, averaged or mistyped.",
  look: ({ refused }) => unreadableAs(refused, SAYS),
});
