import { DISCHARGE_WITHIN } from "../../methods/delivery/discharge-time";
import { minutesBetween } from "../../methods/sampling/sampling-times";
import { testRule } from "../rule";

/** A truck that was discharged late. */
export const dischargedLate = testRule({
  id: "discharged-late",
  weight: "note",
  needs: ["batched", "discharged"],
  anyMethod: true,
  says: ["discharged-late"],
  basis:
    "Where the sheet has no limit of its own, discharge is complete 90 min after batching (from memory, ASTM C94; purchaser and producer may agree on another limit).",
  look({ values: { batched, discharged, dischargeLimit = DISCHARGE_WITHIN } }) {
    if (batched === undefined || discharged === undefined) return undefined;
    const minutes = minutesBetween(batched, discharged);
    if (minutes <= dischargeLimit) return undefined;
    return { field: "discharged", values: { minutes, most: dischargeLimit } };
  },
});
