import { minutesBetween, MOULD_WITHIN } from "../../methods/sampling/sampling-times";
import { testRule } from "../rule";

/** Specimens whose moulding began late. */
export const mouldedLate = testRule({
  id: "moulded-late",
  weight: "doubt",
  needs: ["sampledTo", "moulded"],
  anyMethod: true,
  says: ["moulded-late"],
  basis:
    "Moulding of specimens begins within 15 min of the last portion of the sample (ASTM C172 and C31 as exam pages and a trade site tell them).",
  look({ values: { sampledTo, moulded } }) {
    if (sampledTo === undefined || moulded === undefined) return undefined;
    const minutes = minutesBetween(sampledTo, moulded);
    if (minutes <= MOULD_WITHIN) return undefined;
    return { field: "moulded", values: { minutes, most: MOULD_WITHIN } };
  },
});
