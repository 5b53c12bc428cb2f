import { quoted } from "../measure/cell-value";
import { at, issue, unavailable, type Issue } from "../measure/issue";
import { percentAsShare } from "../measure/percent-as-share";
import type { Operators } from "./operators";
import { PRECISION_TABLE, type PrecisionAt, type PublishedPrecision } from "./precision-table";

/** The precision that is taken where no method is named: of the method this add-in is about, C173. */
export const USUAL_PRECISION = PRECISION_TABLE[0]!;
export const USUAL_METHOD = USUAL_PRECISION.names[0];

/**
 * Published precision of a method.
 *
 * @param method Number as people write it: "C173", "ASTM C231/C231M-17", "T 196", "C138M".
 * @returns Its precision; the issue `precision-method-unknown`, which lists the methods.
 */
export function precisionOfMethod(method: string): PublishedPrecision | Issue {
  const name = method
    .toUpperCase()
    .replace(/ASTM|AASHTO|\s/g, "")
    .replace(/-.*$/, "");
  const found = PRECISION_TABLE.find(({ names }) => names.includes(name));
  if (found) return found;
  const methods = PRECISION_TABLE.map(({ names }) => names[0]).join(", ");
  return at("method", issue("precision-method-unknown", { value: quoted(method), methods }));
}

/**
 * Standard deviation of one result by a method.
 *
 * @param method Published precision, as from `precisionOfMethod`.
 * @param value Result, in the method's unit. Between two values that the precision was established
 *   at it is interpolated in a straight line, beyond them the nearest holds.
 * @param operators Whose results are compared.
 * @returns Deviation in the method's unit; the issue `value-not-in-unit`,
 *   `percent-as-share` or `precision-not-established`.
 */
export function deviationAt(
  method: PublishedPrecision,
  value: number,
  operators: Operators = "several",
): number | Issue {
  return figureAt(method, value, operators, "deviation");
}

/** The most by which two results by a method should differ, near a value. As `deviationAt`. */
export function differenceAt(
  method: PublishedPrecision,
  value: number,
  operators: Operators = "several",
): number | Issue {
  return figureAt(method, value, operators, "difference");
}

function figureAt(
  method: PublishedPrecision,
  value: number,
  operators: Operators,
  figure: "deviation" | "difference",
): number | Issue {
  const { possible, unit, ofValue } = method;
  const name = method.names[0];
  if (value < possible[0] || value > possible[1]) {
    return issue("value-not-in-unit", { value, unit, method: name });
  }
  const share = unit === "%" ? percentAsShare(value) : undefined;
  if (share) return share;
  const levels = method[operators];
  if (!levels) return at("operators", unavailable("precision-not-established", { method: name }));
  const amount = interpolated(levels, value, figure);
  return ofValue ? amount * value : amount;
}

function interpolated(
  levels: readonly PrecisionAt[],
  value: number,
  figure: "deviation" | "difference",
): number {
  const upper = levels.findIndex(({ near }) => near === undefined || near >= value);
  const above = levels[upper] ?? levels.at(-1)!;
  const below = levels[upper - 1];
  if (!below) return above[figure];
  const share = (value - below.near!) / (above.near! - below.near!);
  return below[figure] + share * (above[figure] - below[figure]);
}
