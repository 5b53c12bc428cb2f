import { phrase } from "../../messages/catalogue";
import { sheetRule } from "../rule";

/** Tests of one mix that were sampled at the truck and at the end of a hose. */
export const placesOfSampling = sheetRule({
  id: "places-of-sampling",
  weight: "note",
  needs: ["samplingPlace"],
  says: ["places-of-sampling"],
  basis:
    "Pumping changes the air content, so results from the truck and from the hose are compared apart (common practice; the specification says where the concrete is accepted).",
  *look({ all: tests }) {
    const byMix = new Map<string, Map<string, number[]>>();
    for (const { air, values } of tests) {
      if (air === undefined || values.samplingPlace === undefined) continue;
      const mix = values.mix ?? "";
      const places = byMix.get(mix) ?? new Map<string, number[]>();
      byMix.set(mix, places);
      const place = values.samplingPlace.toLowerCase();
      const airs = places.get(place);
      if (airs) airs.push(air);
      else places.set(place, [air]);
    }
    for (const [mix, places] of byMix) {
      if (places.size < 2) continue;
      const means = [...places].map(([place, airs]) => {
        const mean = airs.reduce((sum, air) => sum + air, 0) / airs.length;
        const shown = { figure: mean, places: 2 };
        return phrase("mean-of-place", { place, mean: shown, tests: airs.length });
      });
      yield {
        record: null,
        field: "samplingPlace" as const,
        values: { mix, means: { all: means } },
      };
    }
  },
});
