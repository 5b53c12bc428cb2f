import { testRule } from "../rule";

/** The lower limit of a specification above the upper one. */
export const limitsCrossed = testRule({
  id: "limits-crossed",
  weight: "error",
  needs: [],
  says: ["limits-crossed"],
  basis: "No result can lie within such limits (from the definition of a limit).",
  look({ limits: { low, high } }, sheet) {
    if (low === undefined || high === undefined || low <= high) return undefined;
    return { field: sheet.has("low") ? "low" : null, values: { low, high } };
  },
});
