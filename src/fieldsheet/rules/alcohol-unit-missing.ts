import { testRule } from "../rule";
import { unreadableAs } from "../unreadable-as";

const SAYS = ["alcohol-has-no-unit", "alcohol-unit-unknown"] as const;

/** An amount of alcohol that could be ounces, pints or litres. */
export const alcoholUnitMissing = testRule({
  id: "alcohol-unit-missing",
  weight: "error",
  needs: ["alcohol"],
  anyMethod: true,
  says: SAYS,
  basis:
    "The correction table has a column for each unit, and a guessed unit gives a wrong correction (common practice).",
  look: ({ unreadable }) =>
    unreadableAs(unreadable, SAYS).filter(({ field }) => field === "alcohol"),
});
