import { QUANTITIES } from "../../measure/plausible";
import { systemOf } from "../../measure/system-of-value";
import { isPorousAggregate } from "../../methods/air-method/porous-aggregate";
import {
  asksForVolumetricCheck,
  FACTOR_TO_VERIFY,
  SLUMP_TO_VERIFY,
} from "../../methods/pressure-air/volumetric-check";
import { testRule } from "../rule";

/** A result of the pressure method that the volumetric method should verify. */
export const pressureCheckDue = testRule({
  id: "pressure-check-due",
  weight: "doubt",
  needs: ["method"],
  needsOneOf: ["aggregateFactor", "slump"],
  anyMethod: true,
  says: ["pressure-check-due", "stiff-pressure-check-due"],
  basis:
    "A pressure meter is verified by the volumetric method where the aggregate correction factor is 0.8 % or more, or the slump 2 in or less (Kansas DOT KT-18; 50 mm is our own pair).",
  look({ otherMethod, values: { aggregate = "", aggregateFactor: factor, slump } }) {
    // Very porous aggregate makes the test void, which its own rule tells.
    if (otherMethod !== "pressure" || isPorousAggregate(aggregate)) return undefined;
    if (asksForVolumetricCheck(factor, undefined, "us")) {
      return { field: "aggregateFactor", values: { factor: factor!, from: FACTOR_TO_VERIFY } };
    }
    const system = slump && systemOf([slump, QUANTITIES.slump]);
    if (!system || !asksForVolumetricCheck(undefined, slump.value, system)) return undefined;
    const unit = QUANTITIES.slump.units[system];
    return {
      field: "slump",
      say: "stiff-pressure-check-due",
      values: { slump: slump.value, most: SLUMP_TO_VERIFY[system], unit },
    };
  },
});
