import type { Rule } from "../rule";

/** Part of a calibrated cup. */
export const cupsNotWhole: Rule = {
  id: "cups-not-whole",
  weight: "error",
  needs: ["cups"],
  basis:
    "Water is added in full calibrated cups, each 1.00 % of the bowl (from memory, ASTM C173 procedure).",
  look({ values: { cups } }) {
    const broken = cups !== undefined && cups >= 0 && !Number.isInteger(cups);
    return broken ? { field: "cups", values: { value: cups } } : undefined;
  },
};
