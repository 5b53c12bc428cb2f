import { exact } from "../../measure/rounding";
import { nearestGraduations, onGraduation } from "../../methods/volumetric-air/meter-reading";
import { READING_FIELDS } from "../../reading/fields";
import { testRule } from "../rule";

/** A reading between two graduations. */
export const offGridReading = testRule({
  id: "off-grid-reading",
  weight: "doubt",
  needs: [],
  says: ["off-grid-reading"],
  yieldsTo: ["beyond-scale", "negative-value", "reading-as-share", "final-reading-wrong"],
  basis:
    "The bottom of the meniscus is read to the nearest 0.25 % (a meter maker's manual, 2019, describing ASTM C173); a reading off that grid was estimated, averaged or mistyped. It is taken as it was written.",
  look({ state, values }) {
    const { first, second, third, final } = values;
    if (state === "void" || ![first, second, third, final].some(isOff)) return undefined;
    // A final reading that is one of the others written down again is said there.
    const again = final !== undefined && [first, second, third].includes(final);
    return READING_FIELDS.flatMap((field) => {
      const value = values[field];
      if (value === undefined || !isOff(value) || (again && field === "final")) return [];
      return [{ field, values: { value: exact(value), ...nearestGraduations(value) } }];
    });
  },
});

function isOff(reading: number | undefined): boolean {
  return reading !== undefined && !onGraduation(reading);
}
