import { testRule } from "../rule";
import { unreadableAs } from "../unreadable-as";

/** So many cups that the air comes out beyond any concrete. */
export const airBeyondMost = testRule({
  id: "air-beyond-most",
  weight: "error",
  needs: ["cups"],
  says: ["air-beyond-most"],
  basis:
    "More than 30 % of air is beyond any concrete that the method is for, so the cups were miscounted or another number stands in their place (our own limit).",
  look: ({ refused }) => unreadableAs(refused, ["air-beyond-most"]),
});
