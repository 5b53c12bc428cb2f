import { isOver, saidOf } from "../../measure/bounded";
import { SETTLE_WITHIN_MINUTES } from "../../methods/volumetric-air/settled-level";
import { voidRule } from "../rule";

/** The level took too long to settle. */
export const slowToSettle = voidRule({
  id: "slow-to-settle",
  needs: ["settle"],
  says: ["slow-to-settle"],
  basis:
    "A level that needs more than six minutes to settle makes the test void; it is repeated with more alcohol (a meter maker's manual, 2019, describing ASTM C173).",
  look({ values: { settle } }) {
    if (settle === undefined || !isOver(settle, SETTLE_WITHIN_MINUTES)) return undefined;
    return { field: "settle", values: { minutes: saidOf(settle), limit: SETTLE_WITHIN_MINUTES } };
  },
});
