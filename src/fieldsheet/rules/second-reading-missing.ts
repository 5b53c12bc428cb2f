import { testRule } from "../rule";

/** The confirming reading is not there. */
export const secondReadingMissing = testRule({
  id: "second-reading-missing",
  weight: "error",
  needs: ["second"],
  says: ["second-reading-missing"],
  basis:
    "The meter is always rolled again, and a second reading confirms the first (a meter maker's manual, 2019, describing ASTM C173).",
  look({ state, readings }) {
    const missing = state !== "void" && readings?.next === "second reading";
    return missing ? { field: "second" } : undefined;
  },
});
