import { litres } from "../../measure/volume";
import { isTooSmall, leastMeasure } from "../../methods/density-and-yield/least-measure";
import { testRule } from "../rule";

/** What measures for density hold. */
const USUAL_MEASURES = { ft3: [0.05, 4], L: [4.5, 120] } as const;

/** A measure for density that is too small for the aggregate. */
export const measureTooSmall = testRule({
  id: "measure-too-small",
  weight: "doubt",
  needs: ["measureVolume", "aggregateSize"],
  anyMethod: true,
  says: ["measure-too-small"],
  basis:
    "The larger the aggregate, the larger the measure for density: 0.2 ft³ (6 L) up to 1 in, 0.4 (11) up to 1½ in, 0.5 (14) up to 2 in, 1.0 (28) up to 3 in, 2.5 (70) up to 4½ in, 3.5 (100) up to 6 in (from memory, ASTM C138 Table 1).",
  look({ values: { measureVolume, aggregateSize } }) {
    if (!measureVolume || !aggregateSize) return undefined;
    const volume = litres(measureVolume, USUAL_MEASURES);
    const least = leastMeasure(aggregateSize);
    if (volume === undefined || !least || !isTooSmall(volume, least)) return undefined;
    const { size, unit } = aggregateSize;
    return { field: "measureVolume", values: { size, unit, ft3: least.ft3, litres: least.L } };
  },
});
