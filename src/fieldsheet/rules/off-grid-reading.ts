import {
  nearestGraduations,
  onGraduation,
  SCALE_END,
} from "../../methods/volumetric-air/meter-reading";
import { READING_FIELDS } from "../reading-fields";
import type { Rule } from "../rule";

/** A reading between two graduations. */
export const offGridReading: Rule = {
  id: "off-grid-reading",
  weight: "error",
  needs: [],
  basis:
    "The bottom of the meniscus is read to the nearest 0.25 % (a meter maker's manual, 2019, describing ASTM C173); a reading off that grid was estimated, averaged or mistyped.",
  look({ values }) {
    return READING_FIELDS.flatMap((field) => {
      const value = values[field];
      const onScale = value !== undefined && value >= 0 && value <= SCALE_END;
      if (!onScale || onGraduation(value)) return [];
      return [{ field, values: { value, ...nearestGraduations(value) } }];
    });
  },
};
