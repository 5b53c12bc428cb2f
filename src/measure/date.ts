import { cellErrorIssue } from "./cell-error-issue";
import { isBlank, isCellError, quoted, shownValue, writtenIn, type CellValue } from "./cell-value";
import type { DateOrder, DatesOfColumn } from "./date-order";
import { folded } from "./folded";
import { isIssue, issue, type Issue } from "./issue";
import { monthName, monthNamed } from "./month-names";
import { isDayNumber, spreadsheetDay, writtenDay } from "./spreadsheet-day";

const YEAR_FIRST = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})/;
/** Without a sign between, as ISO 8601 has it too and as databases keep days: 20260531. */
const YEAR_FIRST_RUN_TOGETHER = /^((?:19|20)\d{2})(\d{2})(\d{2})$/;
const YEAR_LAST = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})$/;
const NO_YEAR = /^(\d{1,2})[-/](\d{1,2})$/;
/** With the month named, once points, commas, "de" and the day of the week are taken out. */
const DAY_MONTH_YEAR = /^(\d{1,2})(?:er|st|nd|rd|th)?[ -]([a-z]+)[ -](\d{4}|\d{2})$/;
const MONTH_DAY_YEAR = /^([a-z]+)[ -](\d{1,2})(?:st|nd|rd|th)?[ -](\d{4})$/;
const DAY_OF_WEEK =
  /^(?:mon|tue|wed|thu|fri|sat|sun|lun|mie|jue|vie|sab|dom|jeu|ven|sam|dim|mer|die|mit|don|fre|son)[a-z]* |^(?:mo|di|mi|do|fr|sa|so) /;
const CLOCK_BEHIND = /[ t,]+\d{1,2}:\d{2}(?::\d{2})?(?:\s*[ap]\.?m?\.?)?$/i;

/** Days by which a workbook that counts from 1904 is behind one that counts from 1900. */
const DAYS_TO_1904 = 1462;

/** How the dates of a cell's column and workbook are written. */
export interface DatesWritten extends DatesOfColumn {
  /** From which year the workbook counts its days; 1900 when absent. */
  readonly countedFrom?: 1900 | 1904;
}

/**
 * The day in a cell, counted as spreadsheets count days from 1900; `undefined` for a blank.
 *
 * Texts are read with the year first (also 20260531, as a number too), with the month named in English, Spanish, French or German, and
 * with the year last where that can be one day only: 31.5.2026 and 5/31/2026, while 5/6/2026 could be
 * two unless its column shows the order. A year of two figures is one of this century.
 *
 * @returns The issue `not-a-date`, `date-is-unclear`, `two-ways` or `cell-error` where it cannot be read.
 */
export function dateFromCell(
  value: CellValue,
  dates: DatesWritten = {},
): number | undefined | Issue {
  if (isBlank(value)) return undefined;
  if (isCellError(value)) return cellErrorIssue(value);
  if (isDayNumber(value))
    return Math.floor(value) + (dates.countedFrom === 1904 ? DAYS_TO_1904 : 0);
  const written = writtenIn(shownValue(value));
  const yearFirst = YEAR_FIRST.exec(written) ?? YEAR_FIRST_RUN_TOGETHER.exec(written);
  if (yearFirst) return dayOf(+yearFirst[1]!, +yearFirst[2]! - 1, +yearFirst[3]!, written);
  const day = written.replace(CLOCK_BEHIND, "");
  const yearLast = YEAR_LAST.exec(day);
  if (yearLast) {
    const [, one, mark, two, year] = yearLast as unknown as [
      string,
      string,
      string,
      string,
      string,
    ];
    const order = mark === "." ? (dates.withPoints ?? dates.order) : dates.order;
    return dayWithYearLast(+one, +two, fullYear(year), written, order);
  }
  const noYear = NO_YEAR.exec(day);
  if (noYear) return dayWithoutYear(+noYear[1]!, +noYear[2]!, written);
  return dayWithMonthNamed(day) ?? notADate(written);
}

/** The time of day that is written behind a date in one text; `undefined` where there is no date before it. */
export function clockBehindDate(text: string): string | undefined {
  const written = writtenIn(text);
  const clock = CLOCK_BEHIND.exec(written);
  const day = clock && clock.index > 0 ? dateFromCell(written.slice(0, clock.index)) : undefined;
  if (day === undefined || (isIssue(day) && day.id !== "date-is-unclear")) return undefined;
  return clock![0].replace(/^[ t,]+/i, "");
}

function dayWithMonthNamed(written: string): number | Issue | undefined {
  const plain = folded(written)
    .replace(/[.,]/g, " ")
    .replace(/\bde\b/g, " ")
    .replace(/\s+/g, " ")
    .trim()
    .replace(DAY_OF_WEEK, "");
  const dayFirst = DAY_MONTH_YEAR.exec(plain);
  const monthFirst = dayFirst ? null : MONTH_DAY_YEAR.exec(plain);
  const [day, name, year] = dayFirst
    ? [dayFirst[1]!, dayFirst[2]!, dayFirst[3]!]
    : monthFirst
      ? [monthFirst[2]!, monthFirst[1]!, monthFirst[3]!]
      : [];
  const month = name === undefined ? undefined : monthNamed(name);
  return month === undefined ? undefined : dayOf(fullYear(year!), month, +day!, written);
}

function fullYear(written: string): number {
  return written.length === 2 ? 2000 + Number(written) : Number(written);
}

/** Which of the first two numbers is the month shows where only one of them can be, or in the column. */
function dayWithYearLast(
  one: number,
  two: number,
  year: number,
  written: string,
  order?: DateOrder,
): number | Issue {
  const dayFirst = () => dayOf(year, two - 1, one, written);
  const monthFirst = () => dayOf(year, one - 1, two, written);
  if (one > 12) return dayFirst();
  if (two > 12 || one === two) return monthFirst();
  if (one === 0 || two === 0) return notADate(written);
  if (order) return order === "day first" ? dayFirst() : monthFirst();
  const [month, day] = [monthFirst(), dayFirst()].map((each) => writtenDay(each as number));
  return issue("date-is-unclear", { value: quoted(written), one: month!, other: day! });
}

/** A day and a month alone are not read: they may be any year's, and often in two orders. */
function dayWithoutYear(one: number, two: number, written: string): Issue {
  if (one < 1 || two < 1 || one > 12 || two > 12) return notADate(written);
  return issue("two-ways", {
    value: quoted(written),
    one: `${monthName(one - 1)} ${two} of a year not written`,
    other: `${one} ${monthName(two - 1)} of a year not written`,
  });
}

function dayOf(year: number, month: number, day: number, written: string): number | Issue {
  return spreadsheetDay(year, month, day) ?? notADate(written);
}

function notADate(written: string): Issue {
  return issue("not-a-date", { value: quoted(written) });
}
