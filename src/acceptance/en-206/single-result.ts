import { notWaterCement } from "../../methods/water-cement/water-cement";
import { quoted } from "../../measure/cell-value";
import { at, issue, type Issue } from "../../measure/issue";
import { percentAsShare } from "../../measure/percent-as-share";
import { implausible, QUANTITIES } from "../../measure/plausible";
import { exact } from "../../measure/rounding";
import { unsoundLimits } from "../spec-limits";
import type { SpecLimits } from "../limits";

/** What EN 206 lets a single result differ from its limits. */
export type En206Quantity = "air" | "lightweight density" | "w/c";

/** How far a single result may lie below and above the limits (EN 206-1 Table 17, German edition). */
export const SINGLE_RESULT: Readonly<
  Record<En206Quantity, { readonly below: number; readonly above: number }>
> = {
  /** %, absolute. */
  air: { below: 0.5, above: 1 },
  /** kg/m³. */
  "lightweight density": { below: 30, above: 30 },
  "w/c": { below: Infinity, above: 0.02 },
};

/** The upper end of the air content where only a least is given: that much more, % (DIN 1045-2, two German trade pages). */
export const GERMAN_UPPER_END = 4;

/** The quantity that a text names. Gives the issue `en206-quantity-unknown`. */
export function en206QuantityNamed(text: string): En206Quantity | Issue {
  const named = [
    ["air", /air|luft|^lp$/i],
    ["lightweight density", /dens|light|rohdichte/i],
    ["w/c", /w\s*(?:\/\s*)?\(?c/i],
  ] as const;
  const found = named.find(([, words]) => words.test(text))?.[0];
  return found ?? issue("en206-quantity-unknown", { value: quoted(text) });
}

/**
 * Limits that a single result is held to, from those that are specified.
 *
 * @param limits In % of air, kg/m³, or as w/c; either may be absent and stays so.
 * @param german Whether air with a least value only has the German upper end.
 * @returns In the same unit, or the issue of limits that cannot be: `percent-as-share`,
 *   `water-cement-limit-cannot-be`, or one of `implausible`.
 * @see EN 206-1 Table 17; DIN 1045-2 for the upper end.
 */
export function singleResultLimits(
  quantity: En206Quantity,
  limits: SpecLimits,
  german = false,
): SpecLimits | Issue {
  const wrong = unsoundLimits(limits);
  if (wrong) return wrong;
  const { low, high } = limits;
  const cannotBe = at("low", notOf(quantity, low)) ?? at("high", notOf(quantity, high));
  if (cannotBe) return cannotBe;
  const { below, above } = SINGLE_RESULT[quantity];
  // A least w/c says nothing of a single result: it is the high limit in the wrong place.
  if (below === Infinity && high === undefined) return at("high", issue("limits-missing"));
  const upper =
    high ??
    (german && quantity === "air" && low !== undefined ? low + GERMAN_UPPER_END : undefined);
  return {
    low: low === undefined || below === Infinity ? undefined : exact(low - below),
    high: upper === undefined ? undefined : exact(upper + above),
  };
}

/** What is wrong with a limit that is none of the quantity in its unit. */
function notOf(quantity: En206Quantity, limit: number | undefined): Issue | undefined {
  if (limit === undefined) return undefined;
  if (quantity === "air") return percentAsShare(limit);
  return quantity === "w/c" ? notWaterCement(limit) : implausible(limit, QUANTITIES.density, "si");
}
