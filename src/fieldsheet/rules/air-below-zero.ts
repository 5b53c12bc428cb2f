import { alcoholCorrection, TABLE_END } from "../../methods/volumetric-air/alcohol-correction";
import { exact } from "../../measure/rounding";
import type { Rule } from "../rule";

/** The correction takes away more than was read. */
export const airBelowZero: Rule = {
  id: "air-below-zero",
  weight: "error",
  needs: ["alcohol"],
  basis: "Concrete cannot hold less than no air (from the definition of the method).",
  look({ finalReading, values: { alcohol, cups = 0 } }) {
    if (finalReading === undefined || finalReading < 0 || cups < 0) return undefined;
    if (!alcohol || alcohol.amount < 0 || alcohol.amount > TABLE_END[alcohol.unit])
      return undefined;
    const { subtract } = alcoholCorrection(alcohol);
    const air = exact(finalReading + cups - subtract);
    if (air >= 0) return undefined;
    return { field: "alcohol", values: { reading: finalReading, subtract, air } };
  },
};
