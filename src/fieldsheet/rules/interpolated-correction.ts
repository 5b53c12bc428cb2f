import { testRule } from "../rule";

/** The correction was read between two rows of the table. */
export const interpolatedCorrection = testRule({
  id: "interpolated-correction",
  weight: "note",
  needs: ["alcohol"],
  says: ["interpolated-correction"],
  basis:
    "The rows of the correction table lie on a straight line, so between them the correction is interpolated (our own reading of ASTM C173 Table 1; what the method says about amounts between rows was not read).",
  look({ state, result, values: { alcohol } }) {
    if (state !== "valid" || !result?.interpolated) return undefined;
    const { amount, unit } = alcohol!;
    return { field: "alcohol", values: { value: amount, unit, subtracted: result.subtracted } };
  },
});
