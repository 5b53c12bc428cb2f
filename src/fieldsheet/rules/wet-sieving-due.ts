import { LARGEST_AGGREGATE } from "../../methods/volumetric-air/procedure";
import { testRule } from "../rule";

/** Aggregate that is too large for the bowl. */
export const wetSievingDue = testRule({
  id: "wet-sieving-due",
  weight: "doubt",
  needs: ["aggregateSize"],
  says: ["wet-sieving-due"],
  basis:
    "Aggregate that would be kept on a 1½ in (37.5 mm) sieve is removed by wet sieving over 1 in (25 mm) (Louisiana DOTD TR 202, 2008).",
  look({ values: { aggregateSize, wetSieved } }) {
    if (!aggregateSize || wetSieved) return undefined;
    const { size, unit } = aggregateSize;
    if (size <= LARGEST_AGGREGATE[unit]) return undefined;
    return { field: "aggregateSize", values: { size, unit, most: LARGEST_AGGREGATE[unit] } };
  },
});
