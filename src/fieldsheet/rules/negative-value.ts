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
    const numbers = NEVER_NEGATIVE.map((field) => ({
      field: field as FieldId,
      value: values[field],
    }));
    const bounded = (["foam", "settle"] as const).map((field) => ({
      field,
      value: values[field]?.value,
    }));
    const amounts = (["alcohol", "water"] as const).map((field) => ({
      field,
      value: values[field]?.amount,
    }));
    return [...numbers, ...bounded, ...amounts].flatMap(({ field, value }) =>
      value !== undefined && value < 0 ? [{ field, values: { value } }] : [],
    );
  },
});
