import {
  minutesBetween,
  SAMPLING_WITHIN,
  START_WITHIN,
} from "../../methods/sampling/sampling-times";
import { testRule, type RemarkIn } from "../rule";

const SAYS = ["stale-sample", "sampling-took-long"] as const;

/** Too much time went by from sampling to testing. */
export const staleSample = testRule({
  id: "stale-sample",
  weight: "doubt",
  needs: ["sampledTo"],
  needsOneOf: ["sampledFrom", "start"],
  anyMethod: true,
  says: SAYS,
  basis:
    "The portions of a sample are taken within 15 min, and the air test starts within 5 min of the last one (ASTM C172 as told in a concrete field-technician study guide, 2026; Missouri DOT 501 in part).",
  look({ values: { sampledFrom, sampledTo, start } }) {
    if (sampledTo === undefined) return undefined;
    const remarks: RemarkIn<typeof SAYS>[] = [];
    const waited = start === undefined ? 0 : minutesBetween(sampledTo, start);
    if (waited > START_WITHIN) {
      remarks.push({ field: "start", values: { minutes: waited, most: START_WITHIN } });
    }
    const lasted = sampledFrom === undefined ? 0 : minutesBetween(sampledFrom, sampledTo);
    if (lasted > SAMPLING_WITHIN) {
      const values = { minutes: lasted, most: SAMPLING_WITHIN };
      remarks.push({ field: "sampledTo", say: "sampling-took-long", values });
    }
    return remarks;
  },
});
