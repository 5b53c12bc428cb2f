const MONTHS_IN_A_YEAR = 12;
const MILLISECONDS_IN_A_DAY = 86_400_000;
const DAY_ZERO = Date.UTC(1899, 11, 30);

/**
 * The same day of the calendar some months later; where that month does not have it, the first of
 * the next, as `yearsAfter` does: from 31 August, half a year on is 1 March.
 *
 * @param day As a spreadsheet counts days.
 */
export function monthsAfter(day: number, months: number): number {
  const from = new Date(DAY_ZERO + day * MILLISECONDS_IN_A_DAY);
  const month = from.getUTCMonth() + months;
  const [year, monthOfYear] = [
    from.getUTCFullYear() + Math.floor(month / MONTHS_IN_A_YEAR),
    ((month % MONTHS_IN_A_YEAR) + MONTHS_IN_A_YEAR) % MONTHS_IN_A_YEAR,
  ];
  const lastDay = new Date(Date.UTC(year, monthOfYear + 1, 0)).getUTCDate();
  const date = Date.UTC(year, monthOfYear, Math.min(from.getUTCDate(), lastDay + 1));
  return Math.round((date - DAY_ZERO) / MILLISECONDS_IN_A_DAY);
}
