import { singleResultLimits } from "../../acceptance/en-206/single-result";
import { compareWithLimits, type SpecLimits } from "../../acceptance/limits";
import { isIssue } from "../../measure/issue";
import { QUANTITIES } from "../../measure/plausible";
import { systemOf } from "../../measure/system-of-value";
import { FRESH_DENSITY_TOLERANCE } from "../../methods/lightweight-density/fresh-density-tolerance";
import { testRule } from "../rule";

const EN_206 = /\bEN\s*-?206\b/i;

/** kg/m³; EN 206 calls concrete lightweight up to there (from memory, to be verified). */
const MOST_OF_LIGHTWEIGHT = 2000;

/** A fresh density that lies outside what is specified for it. */
export const densityOutsideSpecification = testRule({
  id: "density-outside-specification",
  weight: "doubt",
  needs: ["density"],
  needsOneOf: ["densityTarget", "densityLow", "densityHigh"],
  anyMethod: true,
  says: ["density-below-specification", "density-above-specification"],
  basis:
    "The fresh density is judged on ASTM C138 (ASTM C567); where only a density is specified, 3 lb/ft³ either way are usual (common practice), 50 kg/m³ in SI (our own pair). Where the delivery standard is EN 206, a single result of lightweight concrete, which is of 2,000 kg/m³ or less, may lie 30 kg/m³ beyond its limits or its specified density (EN 206-1 Table 17, German edition). A density on a limit is within.",
  look({ values }, { columns }) {
    const { density, densityTarget: target, densityLow, densityHigh, deliveryStandard } = values;
    if (density === undefined) return undefined;
    const unit = columns.density?.unit;
    const given = [density, target, densityLow, densityHigh].filter((value) => value !== undefined);
    const system = systemOf(
      ...given.map((value) => [{ value, unit }, QUANTITIES.density] as const),
    );
    if (!system) return undefined;
    const specified = [target, densityLow, densityHigh].filter((value) => value !== undefined);
    const en206 = system === "si" && EN_206.test(deliveryStandard ?? "");
    const { low, high } =
      en206 && specified.every((value) => value <= MOST_OF_LIGHTWEIGHT)
        ? singleResult({ low: densityLow ?? target, high: densityHigh ?? target })
        : limitsAround(
            { low: densityLow, high: densityHigh },
            target,
            FRESH_DENSITY_TOLERANCE[system],
          );
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

function limitsAround(
  { low, high }: SpecLimits,
  target: number | undefined,
  off: number,
): SpecLimits {
  return { low: low ?? (target && target - off), high: high ?? (target && target + off) };
}

/** Crossed limits are said by the rule that looks at limits; nothing is compared with them. */
function singleResult(limits: SpecLimits): SpecLimits {
  const widened = singleResultLimits("lightweight density", limits);
  return isIssue(widened) ? {} : widened;
}
