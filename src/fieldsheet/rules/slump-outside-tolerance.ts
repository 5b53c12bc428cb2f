import { compareWithLimits } from "../../acceptance/limits";
import type { Measured } from "../../measure/measured";
import { QUANTITIES } from "../../measure/plausible";
import { exact } from "../../measure/rounding";
import { systemOf } from "../../measure/system-of-value";
import { slumpLimit } from "../../methods/slump/slump-limit";
import { slumpTolerance } from "../../methods/slump/slump-tolerance";
import { testRule } from "../rule";

/** A slump too far from the nominal one. */
export const slumpOutsideTolerance = testRule({
  id: "slump-outside-tolerance",
  weight: "doubt",
  needs: ["slump"],
  needsOneOf: ["nominalSlump", "slumpLow", "slumpHigh"],
  anyMethod: true,
  says: ["slump-outside-tolerance", "slump-below-limit", "slump-above-limit"],
  basis:
    "Where limits are specified, the slump lies between them. Else it may lie ½ in (15 mm) from a nominal one of up to 2 in (50 mm), 1 in (25 mm) up to 4 in (100 mm), and 1½ in (40 mm) above that (from memory, ASTM C94).",
  look({ values: { slump, nominalSlump: nominal, slumpLow, slumpHigh } }) {
    if (!slump) return undefined;
    if (slumpLow || slumpHigh) return outsideLimits(slump, slumpLow, slumpHigh);
    if (!nominal) return undefined;
    const system = systemOf([slump, QUANTITIES.slump], [nominal, QUANTITIES.nominalSlump]);
    if (!system) return undefined;
    const tolerance = slumpTolerance(nominal.value, system);
    const [low, high] = [exact(nominal.value - tolerance), exact(nominal.value + tolerance)];
    if (compareWithLimits(slump.value, low, high) === "within") return undefined;
    const unit = QUANTITIES.slump.units[system];
    const values = { slump: slump.value, nominal: nominal.value, low, high, unit };
    return { field: "slump", values };
  },
});

function outsideLimits(slump: Measured, low?: Measured, high?: Measured) {
  const limits = [low, high].flatMap((limit) =>
    limit ? [[limit, slumpLimit(limit.value)] as const] : [],
  );
  const system = systemOf([slump, QUANTITIES.slump], ...limits);
  if (!system) return undefined;
  const verdict = compareWithLimits(slump.value, low?.value, high?.value);
  if (verdict === "within") return undefined;
  const below = verdict === "below";
  return {
    field: "slump" as const,
    say: below ? ("slump-below-limit" as const) : ("slump-above-limit" as const),
    values: {
      slump: slump.value,
      limit: (below ? low : high)!.value,
      unit: QUANTITIES.slump.units[system],
    },
  };
}
