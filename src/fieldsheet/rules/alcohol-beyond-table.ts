import { TABLE_END } from "../../methods/volumetric-air/alcohol-correction";
import type { Rule } from "../rule";

/** More alcohol than the correction table knows. */
export const alcoholBeyondTable: Rule = {
  id: "alcohol-beyond-table",
  weight: "error",
  needs: ["alcohol"],
  basis:
    "The correction table ends at 5 pt, 80 fl oz or 2.4 L (ASTM C173 Table 1 as reproduced in a meter maker's manual, 2019).",
  look({ values: { alcohol } }) {
    if (!alcohol || alcohol.amount <= TABLE_END[alcohol.unit]) return undefined;
    const { amount, unit } = alcohol;
    return { field: "alcohol", values: { value: amount, unit, end: TABLE_END[unit] } };
  },
};
