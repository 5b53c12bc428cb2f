import { disposition } from "../acceptance/disposition/disposition";
import { dispositionRuleNamed } from "../acceptance/disposition/rules";
import { en206QuantityNamed, singleResultLimits } from "../acceptance/en-206/single-result";
import { unsoundLimits } from "../acceptance/spec-limits";
import { isIssue } from "../measure/issue";
import { yesOrNoFromCell } from "../measure/words-from-cell";
import { number, optional, setting, text, type Argument } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";
import { rowByRow } from "./runner/row-by-row";

/** The rule of decision; the check-test rule where none is named. */
const rule: Argument<"check test" | "preliminary sample" | "averaged"> = {
  name: "rule",
  optional: true,
  setting: true,
  otherwise: "check test",
  read: (cell) => {
    const name = text("rule").read(cell);
    return name === undefined || isIssue(name) ? name : dispositionRuleNamed(name);
  },
};

/**
 * What to do with a load after a test: "accept", "check test", "adjust and retest", "acceptance sample", "hold" or "reject", by the rule that the specification names: "check test" or "preliminary sample" (ASTM C94), or "averaged" (UFGS 03300A).
 * @customfunction DISPOSITION DISPOSITION
 * @param first First result, in the unit of the limits.
 * @param low Low limit; blank for none.
 * @param high High limit; blank for none.
 * @param [rule] "check test" unless given; "preliminary sample"; "averaged".
 * @param [second] Result that followed: check test, second test, or the acceptance sample; blank when not made yet.
 * @param [minutes] Minutes left of the time to discharge on the ticket; looked at for a preliminary sample.
 * @param [revolutions] Revolutions left of those on the ticket; looked at for a preliminary sample.
 * @param [far] How far outside its limits a result is far outside, so that no check test saves it and the load is held.
 * @returns What to do, as a text.
 * @example =FRESH.DISPOSITION(7.75, 4.5, 7.5) gives "check test" [7.75 lies above 7.5; C94-98, 16.6]
 * @example =FRESH.DISPOSITION(3, 5, 7, "preliminary sample", , 20, 40) gives "adjust and retest" [a trade article's example, with 30 of the 40 revolutions left]
 * @example =FRESH.DISPOSITION(8, 4.5, 7.5, "averaged", 6.5, 20, 40, 2) gives "accept" [(8 + 6.5) / 2 = 7.25; UFGS 03300A, older text; 0.5 over is not more than 2]
 */
export function dispositionOfLoad(
  first: any[][],
  low: any[][],
  high: any[][],
  rule?: any[][],
  second?: any[][],
  minutes?: any[][],
  revolutions?: any[][],
  far?: any[][],
): any[][] {
  return dispositionOf(first, low, high, rule, second, minutes, revolutions, far);
}
const dispositionOf = cellByCell(
  [
    number("first"),
    setting(number("low")),
    setting(number("high")),
    rule,
    optional(number("second")),
    setting(number("minutes")),
    setting(number("revolutions")),
    setting(number("far")),
  ],
  (first, low, high, named, second, minutesLeft, revolutionsLeft, far) => {
    const wrong = unsoundLimits({ low, high }, first, second);
    if (wrong) return wrong;
    const load = { first, second, minutesLeft, revolutionsLeft, far };
    return disposition(load, { low, high }, named);
  },
);

/**
 * Limits for a single result by EN 206, side by side, from those that are specified: for air 0.5 % below and 1.0 % above, for the density of lightweight concrete 30 kg/m³ either way, for w/c 0.02 above. EN 206-1 Table 17.
 * @customfunction SPEC.SINGLE SPEC.SINGLE
 * @param quantity "air" in %, "lightweight density" in kg/m³, or "w/c".
 * @param low Low limit; blank for none.
 * @param high High limit; blank for none.
 * @param [german] TRUE where air with a least value only ends 4 % above it, as in DIN 1045-2.
 * @returns Low limit and high limit for one result; blank where there is none.
 * @example =FRESH.SPEC.SINGLE("air", 4.5, 8.5) gives 4, 9.5 [4.5 − 0.5 and 8.5 + 1.0; EN 206-1 Table 17]
 * @example =FRESH.SPEC.SINGLE("air", 4.5, , TRUE) gives 4, 9.5 [4.5 + 4 + 1.0; two German trade pages on DIN 1045-2]
 * @example =FRESH.SPEC.SINGLE("lightweight density", 1600, 1800) gives 1570, 1830 [30 kg/m³ either way; EN 206-1 Table 17]
 */
export function limitsForSingleResult(
  quantity: any[][],
  low: any[][],
  high: any[][],
  german?: any[][],
): any[][] {
  return singleOf(quantity, low, high, german);
}
const singleOf = rowByRow(
  [
    text("quantity"),
    optional(number("low")),
    optional(number("high")),
    setting<boolean>({ name: "german", optional: true, setting: true, read: yesOrNoFromCell }),
  ],
  2,
  (named, low, high, german) => {
    const quantity = en206QuantityNamed(named);
    if (isIssue(quantity)) return quantity;
    const limits = singleResultLimits(quantity, { low, high }, german);
    return isIssue(limits) ? limits : [limits.low ?? "", limits.high ?? ""];
  },
);
