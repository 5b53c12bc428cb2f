import type { FieldId } from "../../reading/fields";
import { testRule } from "../rule";

const NEVER_NEGATIVE = [
  "first",
  "second",
  "third",
  "final",
  "cups",
  "inversion",
  "longestInversion",
  "roll",
  "aggregateFactor",
  "alcoholStrength",
  "density",
  "theoreticalDensity",
] as const satisfies readonly FieldId[];

const BOUNDED = ["foam", "settle"] as const;
const AMOUNTS = ["alcohol", "water"] as const;

/** A quantity below zero that cannot be. */
export const negativeValue = testRule({
  id: "negative-value",
  weight: "error",
  needs: [],
  anyMethod: true,
  says: ["negative-value"],
  basis:
    "The scale, counts, amounts and times of the method begin at zero (from the definition of the method).",
  look({ values }) {
    const found: { field: FieldId; values: { value: number } }[] = [];
    const look = (field: FieldId, value: number | undefined) => {
      if (value !== undefined && value < 0) found.push({ field, values: { value } });
    };
    for (const field of NEVER_NEGATIVE) look(field, values[field]);
    for (const field of BOUNDED) look(field, values[field]?.value);
    for (const field of AMOUNTS) look(field, values[field]?.amount);
    return found;
  },
});
