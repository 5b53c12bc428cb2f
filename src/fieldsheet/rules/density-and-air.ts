import { compareWithLimits } from "../../acceptance/limits";
import { isIssue } from "../../measure/issue";
import { QUANTITIES } from "../../measure/plausible";
import { systemOf } from "../../measure/system-of-value";
import { expectedDensity } from "../../methods/density-and-yield/density-from-air";
import { FRESH_DENSITY_TOLERANCE } from "../../methods/lightweight-density/fresh-density-tolerance";
import { testRule } from "../rule";

/** What the air content explains of a density off its target, and what is left. */
export const densityAndAir = testRule({
  id: "density-and-air",
  weight: "note",
  needs: ["density", "densityTarget"],
  needsOneOf: ["target", "low", "high"],
  says: ["density-and-air"],
  basis:
    "With everything else unchanged, density goes as 100 less the air content (derived); so the density at the air found is known from the specified density and the specified air, on lightweight concrete as well. What is left lies in moisture, batching or weighing (common practice).",
  look({ state, result, limits, values: { density, densityTarget, target } }, { columns }) {
    const aim = target?.aim ?? middleOf(limits);
    if (state !== "valid" || !result || density === undefined || densityTarget === undefined) {
      return undefined;
    }
    const unit = columns.density?.unit;
    const system = systemOf(
      [{ value: density, unit }, QUANTITIES.density],
      [{ value: densityTarget, unit }, QUANTITIES.density],
    );
    if (!system || aim === undefined) return undefined;
    const off = FRESH_DENSITY_TOLERANCE[system];
    if (compareWithLimits(density, densityTarget - off, densityTarget + off) === "within") {
      return undefined;
    }
    const expected = expectedDensity({ density: densityTarget, air: aim }, result.air);
    if (isIssue(expected)) return undefined;
    const places = system === "us" ? 1 : 0;
    const written = (figure: number) => ({ figure, places, signed: true }) as const;
    return {
      field: "density",
      values: {
        off: written(density - densityTarget),
        byAir: written(expected - densityTarget),
        left: written(density - expected),
        air: result.air,
        aim,
        unit: QUANTITIES.density.units[system],
      },
    };
  },
});

function middleOf({ low, high }: { readonly low?: number; readonly high?: number }) {
  return low === undefined || high === undefined ? undefined : (low + high) / 2;
}
