import { notAboveZero } from "../../measure/bounds";
import { issue, type Issue } from "../../measure/issue";

/** A cup or canister that is a smaller or larger % of its bowl was noted in another unit. */
const CAN_BE = [0.1, 20] as const;

/**
 * Volume of a cup or canister as % of the bowl that it belongs to.
 *
 * @param cup Volume of the cup.
 * @param bowl Volume of the bowl, in the same unit.
 * @returns %; the issue `not-above-zero`, `cup-and-bowl-in-two-units` or `result-beyond-a-cell`.
 * @see ASTM C173 apparatus (calibrated cup); Iowa DOT I.M. 318 (canister of a Type B meter).
 */
export function shareOfBowl(cup: number, bowl: number): number | Issue {
  const wrong = notAboveZero(cup, "cup volume") ?? notAboveZero(bowl, "bowl volume");
  if (wrong) return wrong;
  const percent = (cup / bowl) * 100;
  if (!Number.isFinite(percent)) return issue("result-beyond-a-cell");
  if (percent < CAN_BE[0] || percent > CAN_BE[1]) {
    return issue("cup-and-bowl-in-two-units", {
      cup,
      bowl,
      percent: Number(percent.toPrecision(3)),
    });
  }
  return percent;
}
