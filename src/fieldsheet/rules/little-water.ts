import { WATER_FIRST } from "../../methods/volumetric-air/procedure";
import { testRule } from "../rule";

/** Too little water went in before the alcohol. */
export const littleWater = testRule({
  id: "little-water",
  weight: "doubt",
  needs: ["water"],
  says: ["little-water"],
  basis: "At least 1 pt (0.5 L) of water goes in before the alcohol (common practice).",
  look({ values: { water } }) {
    if (!water || water.amount < 0 || water.amount >= WATER_FIRST[water.unit]) return undefined;
    const { amount, unit } = water;
    return { field: "water", values: { value: amount, unit, least: WATER_FIRST[unit] } };
  },
});
