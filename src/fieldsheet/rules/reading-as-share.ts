import { testRule } from "../rule";
import { unreadableAs } from "../unreadable-as";

/** A reading that a cell with a percentage format holds as a share of one. */
export const readingAsShare = testRule({
  id: "reading-as-share",
  weight: "error",
  needs: [],
  says: ["reading-as-share"],
  basis:
    "A cell with a percentage format holds 0.0575 and shows 5.75 % (how spreadsheets keep percentages); no scale is read to such small numbers (our own rule).",
  look: ({ refused }) => unreadableAs(refused, ["reading-as-share"]),
});
