import { exact } from "../../measure/rounding";
import { testRule } from "../rule";

/** The final reading in the sheet is not the one that the readings give. */
export const finalReadingWrong = testRule({
  id: "final-reading-wrong",
  weight: "error",
  needs: ["first", "second", "final"],
  says: ["final-reading-wrong"],
  basis:
    "The reading that agrees within 0.25 % with the one before it is final: the second, or else the third (a meter maker's manual, 2019, describing ASTM C173; the third by common practice).",
  look({ finalReading, values: { final } }) {
    if (finalReading === undefined || final === undefined) return undefined;
    if (exact(final - finalReading) === 0) return undefined;
    return { field: "final", values: { recorded: final, reading: finalReading } };
  },
});
