import { isBlank, shownValue, type CellValue } from "./cell-value";
import { isIssue, issue, type Issue } from "./issue";
import { numberFromCell, type DecimalMark } from "./number-from-cell";
import { phrase } from "../messages/catalogue";
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

/**
 * Minutes and seconds typed as 7:30 are kept by a spreadsheet as a time of day, 0.3125 of it.
 *
 * @param minutes Minutes of something that takes a minute at least.
 * @param say `duration-as-clock` where a text with its unit is read as well.
 * @returns The issue of a number that can only be such a share of a day.
 */
export function minutesAsClock(
  minutes: number,
  say: "minutes-as-clock" | "duration-as-clock" = "minutes-as-clock",
): Issue | undefined {
  if (minutes <= 0 || minutes >= 1) return undefined;
  const seconds = Math.round(minutes * 86_400);
  // Less than half an hour was typed with its hour, 0:07:30; more is of hours and minutes, 7:30.
  const sixtieths = seconds < 1800 ? seconds : Math.round(seconds / 60);
  const clock = `${Math.floor(sixtieths / 60)}:${`${sixtieths % 60}`.padStart(2, "0")}`;
  return issue(say, { value: Number(minutes.toPrecision(9)), clock });
}

/** Nobody watches a level, or rolls a meter, for so many minutes; seconds are often that many. */
const SECONDS_FROM = 30;

/** The issue `two-ways` of minutes at a meter that can only be seconds. */
export function minutesAsSeconds(minutes: number): Issue | undefined {
  if (minutes < SECONDS_FROM) return undefined;
  const inUnit = (unit: string) => phrase("amount-in-unit", { amount: minutes, unit });
  return issue("two-ways", { value: minutes, one: inUnit("min"), other: inUnit("s") });
}
