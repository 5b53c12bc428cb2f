import { QUANTITIES } from "../../measure/plausible";
import { systemOf } from "../../measure/system-of-value";
import { isPorousAggregate } from "../../methods/air-method/porous-aggregate";
import { SLUMP_MAY_VERIFY, volumetricCheck } from "../../methods/pressure-air/volumetric-check";
import { testRule } from "../rule";

/** A result of the pressure method on stiff concrete, which the volumetric method may have to verify. */
export const pressureCheckMayBeDue = testRule({
  id: "pressure-check-may-be-due",
  weight: "note",
  needs: ["method", "slump"],
  anyMethod: true,
  says: ["pressure-check-may-be-due"],
  basis:
    "With a slump of 2 in or less, a volumetric test may be required to verify the pressure meter (Kansas DOT KT-18; 50 mm is our own pair).",
  look({ otherMethod, values: { aggregate = "", aggregateFactor: factor, slump } }) {
    if (otherMethod !== "pressure" || isPorousAggregate(aggregate)) return undefined;
    const system = slump && systemOf([slump, QUANTITIES.slump]);
    if (!system || volumetricCheck(factor, slump.value, system) !== "may be due") return undefined;
    const unit = QUANTITIES.slump.units[system];
    return {
      field: "slump",
      values: { slump: slump.value, most: SLUMP_MAY_VERIFY[system], unit },
    };
  },
});
