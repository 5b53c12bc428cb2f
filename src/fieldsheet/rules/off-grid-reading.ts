import {
  nearestGraduations,
  onGraduation,
  readingFromShare,
  SCALE_END,
} from "../../methods/volumetric-air/meter-reading";
import { readingsByThemselves } from "../reading-fields";
import type { Remark, Rule } from "../rule";

/** A reading between two graduations. */
export const offGridReading: Rule = {
  id: "off-grid-reading",
  weight: "error",
  needs: [],
  basis:
    "The bottom of the meniscus is read to the nearest 0.25 % (a meter maker's manual, 2019, describing ASTM C173); a reading off that grid was estimated, averaged or mistyped.",
  look(row) {
    return readingsByThemselves(row)
      .filter(({ value }) => value >= 0 && value <= SCALE_END && !onGraduation(value))
      .map(({ field, value }): Remark => {
        const percent = readingFromShare(value);
        return percent
          ? { field, say: "reading-as-share", values: { value, percent } }
          : { field, values: { value, ...nearestGraduations(value) } };
      });
  },
};
