import type { FieldId } from "../fields";
import type { Rule } from "../rule";

const NEVER_NEGATIVE = [
  "first",
  "second",
  "third",
  "final",
  "cups",
  "foam",
  "settle",
] as const satisfies readonly FieldId[];

/** A quantity below zero that cannot be. */
export const negativeValue: Rule = {
  id: "negative-value",
  weight: "error",
  needs: [],
  basis:
    "The scale, counts, amounts and times of the method begin at zero (from the definition of the method).",
  look({ values }) {
    const numbers = NEVER_NEGATIVE.map((field) => ({
      field: field as FieldId,
      value: values[field],
    }));
    return [...numbers, { field: "alcohol" as FieldId, value: values.alcohol?.amount }].flatMap(
      ({ field, value }) =>
        value !== undefined && value < 0 ? [{ field, values: { value } }] : [],
    );
  },
};
