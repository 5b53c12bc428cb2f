import { exact } from "../../measure/rounding";
import { CUP_PERCENT } from "../../methods/volumetric-air/calibrated-cups";
import { readingsTaken } from "../reading-fields";
import { testRule } from "../rule";

/** Cups of water, although the level would have stood on the scale without them. */
export const cupsNotNeeded = testRule({
  id: "cups-not-needed",
  weight: "doubt",
  needs: ["cups"],
  says: ["cups-not-needed"],
  basis:
    "Calibrated cups are added only when the level lies beyond the scale, which reaches at least to 9 % (a meter maker's manual, 2019, describing ASTM C173; Louisiana DOTD TR 202, 2008). Cups without need are often cups miscounted.",
  look(row) {
    const { scaleEnd: end } = row;
    const { cups = 0 } = row.values;
    const taken = readingsTaken(row);
    if (!Number.isInteger(cups) || cups <= 0 || taken.length === 0) return undefined;
    const level = exact(Math.max(...taken) + cups * CUP_PERCENT);
    if (level > end) return undefined;
    return { field: "cups", values: { cups, level, end } };
  },
});
