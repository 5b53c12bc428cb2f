import { cellErrorIssue } from "./cell-error-issue";
import { cellNumber, isBlank, isCellError, quoted, type CellValue } from "./cell-value";
import { clockBehindDate } from "./date";
import { folded } from "./folded";
import { issue, type Issue } from "./issue";
import { isDayNumber } from "./spreadsheet-day";

const MINUTES_IN_A_DAY = 1440;
const CLOCK = /^(\d{1,2})(?::| ?h ?)(\d{2})(?::\d{2})? ?(?:h|hrs?|uhr)?(?:([ap])(?: ?m)?)?$/;
const CLOCK_WITH_POINT = /^(\d{1,2})\.(\d{2}) ?uhr$/;
const FULL_HOUR = /^(\d{1,2}) ?(?:h|uhr)$/;
const FULL_HOUR_OF_HALF = /^(\d{1,2})()([ap])m$/;
const FOUR_FIGURES = /^([01]\d|2[0-3])([0-5]\d) ?(?:h|hrs?|hours|uhr)?$/;

/**
 * The time of day in a cell, in minutes since midnight; `undefined` for a blank.
 *
 * The issue `not-a-time` or `cell-error` where it cannot be read.
 */
export function minuteOfDayFromCell(value: CellValue): number | undefined | Issue {
  if (isBlank(value)) return undefined;
  if (isCellError(value)) return cellErrorIssue(value);
  // Such as 915, which a spreadsheet makes of 0915; no test was made on that day of 1902.
  if (typeof value === "number" && Number.isInteger(value) && value >= 100 && value < 2400)
    return value % 100 < 60 ? Math.floor(value / 100) * 60 + (value % 100) : notATime(value);
  // A time alone is a fraction of a day; with a date it is the fraction that counts.
  const part = typeof value === "number" && value < 1 ? cellNumber(value) : undefined;
  const day = isDayNumber(value) && value >= 366 ? value : part;
  if (day !== undefined && day >= 0)
    return Math.round((day % 1) * MINUTES_IN_A_DAY) % MINUTES_IN_A_DAY;
  if (typeof value !== "string") return notATime(value);
  return clockTime(clockBehindDate(value) ?? value) ?? notATime(value);
}

function clockTime(written: string): number | undefined {
  const plain = folded(written.trim())
    .replace(/([ap])\.? ?m\.?$/, "$1m")
    .replace(/\s+/g, " ");
  const half = plain.replace(/ (?=[ap]m?$)/, "");
  const clock =
    CLOCK.exec(half) ??
    FULL_HOUR_OF_HALF.exec(half) ??
    CLOCK_WITH_POINT.exec(plain) ??
    FOUR_FIGURES.exec(plain) ??
    FULL_HOUR.exec(plain);
  if (!clock) return undefined;
  const hour = hourOf(+clock[1]!, clock[3]);
  const minute = Number(clock[2] ?? 0);
  return hour < 0 || hour > 23 || minute > 59 ? undefined : hour * 60 + minute;
}

function notATime(value: CellValue): Issue {
  return issue("not-a-time", { value: quoted(value) });
}

function hourOf(hour: number, half: string | undefined): number {
  if (!half) return hour;
  if (hour < 1 || hour > 12) return -1;
  return (hour % 12) + (half === "p" ? 12 : 0);
}

/** A time of day in minutes since midnight, written as "14:05". */
export function writtenTime(minute: number): string {
  const [hours, minutes] = [Math.floor(minute / 60), minute % 60];
  return `${String(hours).padStart(2, "0")}:${String(minutes).padStart(2, "0")}`;
}
