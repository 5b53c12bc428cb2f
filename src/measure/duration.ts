import { isBlank, shownValue, type CellValue } from "./cell-value";
import { isIssue, type Issue } from "./issue";
import { numberFromCell, type DecimalMark } from "./number-from-cell";
import { exact } from "./rounding";

/** Units in which a column of durations counts. */
export type DurationUnit = "s" | "min";

const SECONDS: Readonly<Record<DurationUnit, number>> = { s: 1, min: 60 };
const SPELLING =
  /^(?:(s|secs?|seconds?|segs?|segundos?|sek|sekunden?|secondes?)|(?:m|mn|mins?|minutes?|minutos?|minuten?))\.?$/i;
const AMOUNT_AND_UNIT = /^([^a-z]*[\d¼½¾.])\s*([a-z]+\.?)$/i;
const MINUTES_AND_SECONDS =
  /^(?:0{1,2}:)?(\d+)(?:\s*(?:m|min|mins|minutes?|minutos?|minuten)\.?\s*|:)([0-5]?\d)(?:\s*(?:s|secs?|seconds?|seg|segundos?|sek|sekunden|secondes?)\.?)?$/i;

/**
 * Reads how long something took.
 *
 * @param value A number, or a text with its unit: "45 s", "1.5 min", "1:30", "0:01:30" and "1 min 30 s" (minutes and seconds).
 * @param into Unit of the result, and of a number that has none.
 * @param header Unit in the column's header, as written; one that is no duration is passed over.
 * @param decimal "," where decimals are written with a comma.
 * @returns The duration; `undefined` for a blank; an issue of `numberFromCell`.
 */
export function durationFromCell(
  value: CellValue,
  into: DurationUnit,
  header?: string,
  decimal: DecimalMark = ".",
): number | undefined | Issue {
  if (isBlank(value)) return undefined;
  const written = typeof value === "string" ? value.trim() : "";
  const clock = MINUTES_AND_SECONDS.exec(written);
  if (clock) return exact((+clock[1]! * 60 + +clock[2]!) / SECONDS[into]);
  const split = AMOUNT_AND_UNIT.exec(written);
  const named = split && durationUnitNamed(split[2]!);
  const amount = numberFromCell(named ? split[1]! : value, decimal);
  if (amount === undefined || isIssue(amount)) return amount;
  const unit = named || durationUnitNamed(shownValue(header)) || into;
  return exact((amount * SECONDS[unit]) / SECONDS[into]);
}

function durationUnitNamed(word: string): DurationUnit | undefined {
  const spelling = SPELLING.exec(word.trim());
  if (!spelling) return undefined;
  return spelling[1] ? "s" : "min";
}
