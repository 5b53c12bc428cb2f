import { isPorousAggregate } from "../../methods/air-method/porous-aggregate";
import { FACTOR_TO_VERIFY, volumetricCheck } from "../../methods/pressure-air/volumetric-check";
import { testRule } from "../rule";

/** A result of the pressure method that the volumetric method verifies. */
export const pressureCheckDue = testRule({
  id: "pressure-check-due",
  weight: "doubt",
  needs: ["method", "aggregateFactor"],
  anyMethod: true,
  says: ["pressure-check-due"],
  basis:
    "A pressure meter is verified by the volumetric method where the aggregate correction factor is 0.8 % or more (Kansas DOT KT-18).",
  look({ otherMethod, values: { aggregate = "", aggregateFactor: factor } }) {
    // Very porous aggregate makes the test void, which its own rule tells.
    if (otherMethod !== "pressure" || isPorousAggregate(aggregate)) return undefined;
    if (volumetricCheck(factor, undefined, "us") !== "due") return undefined;
    return { field: "aggregateFactor", values: { factor: factor!, from: FACTOR_TO_VERIFY } };
  },
});
