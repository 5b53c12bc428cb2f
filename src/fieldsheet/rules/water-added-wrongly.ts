import { REVOLUTIONS_AFTER_ADDITION } from "../../acceptance/disposition/disposition";
import { testRule, type RemarkIn } from "../rule";

const SAYS = ["water-added-again", "too-few-revolutions-after"] as const;

/** Water that was added to the load more than once, or without enough mixing after it. */
export const waterAddedWrongly = testRule({
  id: "water-added-wrongly",
  weight: "doubt",
  needs: [],
  needsOneOf: ["waterAdditions", "revolutionsAfterWater"],
  anyMethod: true,
  says: SAYS,
  basis:
    "Water is added once, on arrival, and at least 30 revolutions at mixing speed follow; the limits of w/cm and slump still hold (C94-90; ready-mix sheets).",
  look({ values: { addedWater, waterAdditions: times, revolutionsAfterWater: turns } }) {
    const remarks: RemarkIn<typeof SAYS>[] = [];
    if (times !== undefined && times > 1)
      remarks.push({ field: "waterAdditions", values: { times } });
    const none = addedWater?.value === 0 || (addedWater === undefined && times === 0);
    if (!none && turns !== undefined && turns < REVOLUTIONS_AFTER_ADDITION) {
      const values = { turns, least: REVOLUTIONS_AFTER_ADDITION };
      remarks.push({ field: "revolutionsAfterWater", say: "too-few-revolutions-after", values });
    }
    return remarks;
  },
});
