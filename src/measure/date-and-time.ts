import { cellNumber, isBlank, isCellError, quoted, shownValue, type CellValue } from "./cell-value";
import { issue, type Issue } from "./issue";

const MINUTES_IN_A_DAY = 1440;
const YEAR_FIRST = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})/;
const MONTH_NAMED = /^(\d{1,2})[ -]([a-z]{3})[a-z]*[ -](\d{4})$/i;
const YEAR_LAST = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4})$/;
const MONTHS = "jan feb mar apr may jun jul aug sep oct nov dec".split(" ");
const CLOCK = /^(\d{1,2}):(\d{2})(?::\d{2})?\s*(am|pm)?$/i;
/** Day 0 of spreadsheet dates, valid from March 1900 on. */
const DAY_ZERO = Date.UTC(1899, 11, 30);
/** 31 December 9999, the last day that a spreadsheet counts. */
const LAST_DAY = 2_958_465;

/**
 * The day in a cell, counted as spreadsheets count days; `undefined` for a blank.
 *
 * Texts are read with the year first, with the month named, and with the year last where that can
 * be one day only: 31.5.2026 and 5/31/2026, while 5/6/2026 could be two.
 *
 * The issue `not-a-date`, `date-is-unclear` or `cell-error` where it cannot be read.
 */
export function dateFromCell(value: CellValue): number | undefined | Issue {
  if (isBlank(value)) return undefined;
  if (isCellError(value)) return issue("cell-error", { value: quoted(value) });
  if (isDayNumber(value)) return Math.floor(value);
  const written = shownValue(value).trim();
  const yearFirst = YEAR_FIRST.exec(written);
  if (yearFirst) return dayOf(+yearFirst[1]!, +yearFirst[2]! - 1, +yearFirst[3]!, written);
  const named = MONTH_NAMED.exec(written);
  if (named) return dayOf(+named[3]!, MONTHS.indexOf(named[2]!.toLowerCase()), +named[1]!, written);
  const yearLast = YEAR_LAST.exec(written);
  if (yearLast) return dayWithYearLast(+yearLast[1]!, +yearLast[3]!, +yearLast[4]!, written);
  return notADate(written);
}

function isDayNumber(value: CellValue): value is number {
  return typeof value === "number" && value >= 1 && value < LAST_DAY + 1;
}

/** Which of the first two numbers is the month shows where only one of them can be. */
function dayWithYearLast(one: number, two: number, year: number, written: string) {
  if (one <= 12 && two <= 12 && one !== two)
    return issue("date-is-unclear", { value: quoted(written) });
  return one > 12 ? dayOf(year, two - 1, one, written) : dayOf(year, one - 1, two, written);
}

/**
 * The time of day in a cell, in minutes since midnight; `undefined` for a blank.
 *
 * The issue `not-a-time` or `cell-error` where it cannot be read.
 */
export function minuteOfDayFromCell(value: CellValue): number | undefined | Issue {
  if (isBlank(value)) return undefined;
  if (isCellError(value)) return issue("cell-error", { value: quoted(value) });
  // A time alone is a fraction of a day; with a date it is the fraction that counts.
  const part = typeof value === "number" && value < 1 ? cellNumber(value) : undefined;
  const day = isDayNumber(value) && value >= 366 ? value : part;
  if (day !== undefined && day >= 0)
    return Math.round((day % 1) * MINUTES_IN_A_DAY) % MINUTES_IN_A_DAY;
  const clock = typeof value === "string" ? CLOCK.exec(value.trim()) : null;
  const hour = clock ? hourOf(+clock[1]!, clock[3]?.toLowerCase()) : -1;
  const minute = clock ? +clock[2]! : 60;
  if (hour < 0 || hour > 23 || minute > 59) {
    return issue("not-a-time", { value: quoted(value) });
  }
  return hour * 60 + minute;
}

function dayOf(year: number, month: number, day: number, written: string): number | Issue {
  const date = new Date(Date.UTC(year, month, day));
  const exists = date.getUTCMonth() === month && date.getUTCDate() === day;
  if (!exists) return notADate(written);
  return Math.round((date.getTime() - DAY_ZERO) / 86_400_000);
}

function notADate(written: string): Issue {
  return issue("not-a-date", { value: quoted(written) });
}

function hourOf(hour: number, half: string | undefined): number {
  if (!half) return hour;
  if (hour < 1 || hour > 12) return -1;
  return (hour % 12) + (half === "pm" ? 12 : 0);
}

/** A day as a spreadsheet counts it, written as "2026-05-31". */
export function writtenDay(day: number): string {
  return new Date(DAY_ZERO + Math.floor(day) * 86_400_000).toISOString().slice(0, 10);
}

/** The same day of the calendar some years later; from 29 February, 1 March where there is none. */
export function yearsAfter(day: number, years: number): number {
  const date = new Date(DAY_ZERO + day * 86_400_000);
  date.setUTCFullYear(date.getUTCFullYear() + years);
  return Math.round((date.getTime() - DAY_ZERO) / 86_400_000);
}

/** A time of day in minutes since midnight, written as "14:05". */
export function writtenTime(minute: number): string {
  const [hours, minutes] = [Math.floor(minute / 60), minute % 60];
  return `${String(hours).padStart(2, "0")}:${String(minutes).padStart(2, "0")}`;
}
