import { voidRule } from "../rule";

/** Alcohol went into the meter after it had been filled to zero. */
export const alcoholAddedLate = voidRule({
  id: "alcohol-added-late",
  needs: ["lateAlcohol"],
  says: ["alcohol-added-late"],
  basis:
    "All alcohol goes in before the meter is filled to zero, and none afterwards (abstracts of ASTM C173-01e1, -08a and -12); what is added later raises the level that the air has lowered.",
  look({ values: { lateAlcohol } }) {
    return lateAlcohol ? { field: "lateAlcohol" } : undefined;
  },
});
