import { oldDischargeLimits } from "../../methods/delivery/old-discharge-limits";
import { minutesBetween } from "../../methods/sampling/sampling-times";
import { testRule, type RemarkIn } from "../rule";

const SAYS = ["discharged-late", "too-many-revolutions"] as const;

/** A truck that was discharged later, or after more turns of the drum, than is allowed for it. */
export const dischargedLate = testRule({
  id: "discharged-late",
  weight: "note",
  needs: [],
  needsOneOf: ["discharged", "revolutions"],
  anyMethod: true,
  says: SAYS,
  basis:
    "The purchaser, or else the producer, states the time to discharge (C94/C94M-21, 6.1.10 and 12.9, trade news); so a limit must stand in the sheet. 90 min and 300 revolutions are held only where the sheet names an edition that had them: before 2021 and before 2013 (trade news).",
  look({ values }) {
    const { batched, discharged, revolutions, deliveryStandard = "" } = values;
    const old = oldDischargeLimits(deliveryStandard);
    const remarks: RemarkIn<typeof SAYS>[] = [];
    const most = values.dischargeLimit ?? old.minutes;
    if (batched !== undefined && discharged !== undefined && most !== undefined) {
      const minutes = minutesBetween(batched, discharged);
      if (minutes > most) remarks.push({ field: "discharged", values: { minutes, most } });
    }
    const turns = values.revolutionLimit ?? old.revolutions;
    if (revolutions !== undefined && turns !== undefined && revolutions > turns) {
      const say = "too-many-revolutions";
      remarks.push({ field: "revolutions", say, values: { revolutions, most: turns } });
    }
    return remarks;
  },
});
