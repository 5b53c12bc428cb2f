import { compareWithLimits } from "../../acceptance/limits";
import { QUANTITIES } from "../../measure/plausible";
import { exact } from "../../measure/rounding";
import { systemOf } from "../../measure/system-of-value";
import { slumpTolerance } from "../../methods/slump/slump-tolerance";
import { testRule } from "../rule";

/** A slump too far from the nominal one. */
export const slumpOutsideTolerance = testRule({
  id: "slump-outside-tolerance",
  weight: "doubt",
  needs: ["slump", "nominalSlump"],
  anyMethod: true,
  says: ["slump-outside-tolerance"],
  basis:
    "A slump may lie ½ in (15 mm) from a nominal one of up to 2 in (50 mm), 1 in (25 mm) up to 4 in (100 mm), and 1½ in (40 mm) above that (from memory, ASTM C94).",
  look({ values: { slump, nominalSlump: nominal } }) {
    if (!slump || !nominal) return undefined;
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
