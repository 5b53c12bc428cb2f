import type { Rule } from "../rule";

/** An amount of alcohol that could be ounces, pints or litres. */
export const alcoholUnitMissing: Rule = {
  id: "alcohol-unit-missing",
  weight: "error",
  needs: ["alcohol"],
  anyMethod: true,
  basis:
    "The correction table has a column for each unit, and a guessed unit gives a wrong correction (common practice).",
  look({ unreadable: { alcohol: problem }, cells }) {
    if (problem?.id === "alcohol-has-no-unit") {
      return { field: "alcohol", values: { value: String(cells.alcohol) } };
    }
    if (problem?.id !== "alcohol-unit-unknown") return undefined;
    return { field: "alcohol", say: problem.id, values: problem.values };
  },
};
