import type { CellValue } from "./cell-value";

/** Day 0 of spreadsheet dates, valid from March 1900 on. */
const DAY_ZERO = Date.UTC(1899, 11, 30);
/** 31 December 9999, the last day that a spreadsheet counts. */
const LAST_DAY = 2_958_465;

/** Whether a cell holds a day as spreadsheets count days, from 1 January 1900 on. */
export function isDayNumber(value: CellValue): value is number {
  return typeof value === "number" && value >= 1 && value < LAST_DAY + 1;
}

/** The day of a date of the calendar, months from 0; `undefined` where there is none. */
export function spreadsheetDay(year: number, month: number, day: number): number | undefined {
  const date = new Date(Date.UTC(year, month, day));
  const exists = date.getUTCMonth() === month && date.getUTCDate() === day;
  return exists ? Math.round((date.getTime() - DAY_ZERO) / 86_400_000) : undefined;
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
