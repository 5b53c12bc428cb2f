import { testRule } from "../rule";

/** The lower limit of a specification above the upper one. */
export const limitsCrossed = testRule({
  id: "limits-crossed",
  weight: "error",
  needs: [],
  says: ["limits-crossed"],
  basis: "No result can lie within such limits (from the definition of a limit).",
  look: ({ limits: { crossed } }, sheet) =>
    crossed && { field: sheet.has("low") ? "low" : null, values: crossed },
});
