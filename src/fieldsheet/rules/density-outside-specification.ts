import { compareWithLimits } from "../../acceptance/limits";
import { QUANTITIES } from "../../measure/plausible";
import { systemOf } from "../../measure/system-of-value";
import { FRESH_DENSITY_TOLERANCE } from "../../methods/lightweight-density/fresh-density-tolerance";
import { testRule } from "../rule";

/** A fresh density that lies outside what is specified for it. */
export const densityOutsideSpecification = testRule({
  id: "density-outside-specification",
  weight: "doubt",
  needs: ["density"],
  needsOneOf: ["densityTarget", "densityLow", "densityHigh"],
  anyMethod: true,
  says: ["density-below-specification", "density-above-specification"],
  basis:
    "The fresh density is judged on ASTM C138 (ASTM C567); where only a density is specified, 3 lb/ft³ either way are usual (common practice), 50 kg/m³ in SI (our own pair). A density on a limit is within.",
  look({ values: { density, densityTarget: target, densityLow, densityHigh } }, { columns }) {
    if (density === undefined) return undefined;
    const unit = columns.density?.unit;
    const given = [density, target, densityLow, densityHigh].filter((value) => value !== undefined);
    const system = systemOf(
      ...given.map((value) => [{ value, unit }, QUANTITIES.density] as const),
    );
    if (!system) return undefined;
    const tolerance = FRESH_DENSITY_TOLERANCE[system];
    const low = densityLow ?? (target && target - tolerance);
    const high = densityHigh ?? (target && target + tolerance);
    const verdict = compareWithLimits(density, low, high);
    if (verdict === "within") return undefined;
    return {
      field: "density",
      say: verdict === "below" ? "density-below-specification" : "density-above-specification",
      values: {
        density,
        limit: verdict === "below" ? low! : high!,
        unit: QUANTITIES.density.units[system],
      },
    };
  },
});
