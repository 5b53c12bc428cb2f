import { testRule } from "../rule";
import { unreadableAs } from "../unreadable-as";

/** Part of a calibrated cup. */
export const cupsNotWhole = testRule({
  id: "cups-not-whole",
  weight: "error",
  needs: ["cups"],
  says: ["cups-not-whole-number"],
  basis:
    "Water is added in full calibrated cups, each 1.00 % of the bowl (from memory, ASTM C173 procedure).",
  look: ({ refused }) => unreadableAs(refused, ["cups-not-whole-number"]),
});
