import { testRule } from "../rule";
import { unreadableAs } from "../unreadable-as";

/** More alcohol than the correction table knows. */
export const alcoholBeyondTable = testRule({
  id: "alcohol-beyond-table",
  weight: "error",
  needs: ["alcohol"],
  says: ["alcohol-beyond-table"],
  basis:
    "The correction table ends at 5 pt, 80 fl oz or 2.4 L (ASTM C173 Table 1 as reproduced in a meter maker's manual, 2019).",
  look: ({ refused }) => unreadableAs(refused, ["alcohol-beyond-table"]),
});
