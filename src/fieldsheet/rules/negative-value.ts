import type { FieldId } from "../../reading/fields";
import type { FieldValues } from "../../reading/record";
import { testRule } from "../rule";

const NEVER_NEGATIVE = [
  ...([
    "first",
    "second",
    "third",
    "final",
    "cups",
    "inversion",
    "longestInversion",
    "roll",
  ] as const),
  ...(["aggregateFactor", "alcoholStrength", "density", "theoreticalDensity"] as const),
  ...(["foam", "settle", "alcohol", "water"] as const),
] satisfies readonly FieldId[];

/** The numbers of these fields, in the same order. */
function numbersOf(values: FieldValues): readonly (number | undefined)[] {
  const { first, second, third, final, cups, inversion, longestInversion, roll } = values;
  const { aggregateFactor, alcoholStrength, density, theoreticalDensity } = values;
  const { foam, settle, alcohol, water } = values;
  return [
    ...[first, second, third, final, cups, inversion, longestInversion, roll],
    ...[aggregateFactor, alcoholStrength, density, theoreticalDensity],
    ...[foam?.value, settle?.value, alcohol?.amount, water?.amount],
  ];
}

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
    const numbers = numbersOf(values);
    if (!numbers.some(isNegative)) return undefined;
    return NEVER_NEGATIVE.flatMap((field, i) => {
      const value = numbers[i];
      return isNegative(value) ? [{ field, values: { value } }] : [];
    });
  },
});

function isNegative(value: number | undefined): value is number {
  return value !== undefined && value < 0;
}
