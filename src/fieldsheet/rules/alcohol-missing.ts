import { testRule } from "../rule";

/** The sheet asks for the alcohol, and the row does not say how much. */
export const alcoholMissing = testRule({
  id: "alcohol-missing",
  weight: "error",
  needs: ["alcohol"],
  says: ["alcohol-missing"],
  basis:
    "The correction depends on the amount of alcohol, so the record must state it; none is written as 0 (common practice).",
  look({ state, values, unreadable }) {
    const read = values.first ?? values.final;
    const missing = values.alcohol === undefined && !unreadable.alcohol;
    return state !== "void" && read !== undefined && missing ? { field: "alcohol" } : undefined;
  },
});
