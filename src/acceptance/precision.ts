import { Problem } from "../measure/problem";
import type { Operators } from "./operators";
import { PRECISION_TABLE, type PrecisionAt, type PublishedPrecision } from "./precision-table";

/** The method that a deviation is taken from when neither is given: the one this add-in is about. */
export const USUAL_METHOD = "C173";

/**
 * Published precision of a method.
 *
 * @param method Number as people write it: "C173", "ASTM C231/C231M-17", "T 196", "C138M".
 * @throws Problem `precision-method-unknown`, which lists the methods.
 */
export function precisionOfMethod(method: string): PublishedPrecision {
  const name = method
    .toUpperCase()
    .replace(/ASTM|AASHTO|\s/g, "")
    .replace(/-.*$/, "");
  const found = PRECISION_TABLE.find(({ names }) => names.includes(name));
  if (found) return found;
  const methods = PRECISION_TABLE.map(({ names }) => names[0]).join(", ");
  throw new Problem("precision-method-unknown", { value: method, methods });
}

/**
 * Standard deviation of one result by a method.
 *
 * @param method Published precision, as from `precisionOfMethod`.
 * @param value Result, in the method's unit. Between two values that the precision was established
 *   at it is interpolated in a straight line, beyond them the nearest holds.
 * @param operators Whose results are compared.
 * @returns Deviation in the method's unit.
 * @throws Problem `value-not-in-unit`, `precision-not-established`.
 */
export function deviationAt(
  method: PublishedPrecision,
  value: number,
  operators: Operators = "several",
): number {
  return figureAt(method, value, operators, "deviation");
}

/** The most by which two results by a method should differ, near a value. As `deviationAt`. */
export function differenceAt(
  method: PublishedPrecision,
  value: number,
  operators: Operators = "several",
): number {
  return figureAt(method, value, operators, "difference");
}

function figureAt(
  method: PublishedPrecision,
  value: number,
  operators: Operators,
  figure: "deviation" | "difference",
): number {
  const { possible, unit, ofValue } = method;
  const name = method.names[0];
  if (value < possible[0] || value > possible[1]) {
    throw new Problem("value-not-in-unit", { value, unit, method: name });
  }
  const levels = method[operators];
  if (!levels) throw new Problem("precision-not-established", { method: name }, true);
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
