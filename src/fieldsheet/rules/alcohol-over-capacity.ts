import { exact } from "../../measure/rounding";
import { TABLE_END } from "../../methods/volumetric-air/alcohol-correction";
import { TOP_SECTION_HOLDS } from "../../methods/volumetric-air/apparatus";
import { WATER_FIRST } from "../../methods/volumetric-air/procedure";
import { testRule } from "../rule";

/** More alcohol than a top section of the least size can hold beside the first water. */
export const alcoholOverCapacity = testRule({
  id: "alcohol-over-capacity",
  weight: "doubt",
  needs: ["alcohol"],
  says: ["alcohol-over-capacity"],
  basis:
    "A top section of the least size, 1.2 times a bowl of 0.075 ft³, holds 5.39 pt; with 1 pt of water first, 4.39 pt of alcohol fit (derived from Louisiana DOTD TR 202, 2008). A larger top section has another correction (from memory, ASTM C173 Table 1).",
  look({ values: { alcohol } }) {
    // What lies beyond the table is told by its own rule.
    if (!alcohol || alcohol.amount > TABLE_END[alcohol.unit]) return undefined;
    const { amount, unit } = alcohol;
    const most = exact(TOP_SECTION_HOLDS[unit] - WATER_FIRST[unit]);
    if (amount <= most) return undefined;
    return { field: "alcohol", values: { value: amount, unit, water: WATER_FIRST[unit], most } };
  },
});
