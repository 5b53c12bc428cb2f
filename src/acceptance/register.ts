import { issue, type Issue } from "../measure/issue";
import { monthsAfter } from "../measure/months-after";
import { STANDARDISED_WITHIN_YEARS } from "../methods/volumetric-air/apparatus";

/** Months between two checks where nothing else is said: yearly, as the meter ("common practice"). */
export const USUAL_INTERVAL = 12 * STANDARDISED_WITHIN_YEARS;

/** One line of a register of meters, cups, scales or certificates. */
export interface Registered {
  readonly id: string;
  /** Day of the check, as a spreadsheet counts days. */
  readonly checked: number;
  /** Months until the next; that of the register as a whole when absent. */
  readonly interval?: number;
}

/** Nothing here is checked less often; a larger number is of days (our own choice). */
const LONGEST_INTERVAL = 120;

/** How a registered thing stood on a day. */
export type RegisterState =
  | { readonly state: "current" | "due" | "overdue"; readonly days: number }
  | { readonly state: "unknown" };

/** From so many days before the next check on it is called due (our own choice). */
export const DUE_WITHIN_DAYS = 30;

/**
 * How a meter, cup, scale or certificate stood on a day, by the last check before it.
 *
 * The last day of the interval is still current: what was checked on 2 March is overdue by a day on
 * 3 March a year later. A check after the day says nothing of it.
 *
 * @param id As the register writes it, capitals and blanks aside.
 * @param day As a spreadsheet counts days.
 * @param register In any order; an id may stand in it more than once.
 * @param interval Months between two checks, whole.
 * @returns State with the days that are left or over, or the issue `interval-not-whole`.
 * @see ASTM C173: a meter yearly (common practice).
 */
export function registerState(
  id: string,
  day: number,
  register: readonly Registered[],
  interval: number = USUAL_INTERVAL,
): RegisterState | Issue {
  const last = register
    .filter((line) => plain(line.id) === plain(id) && line.checked <= day)
    .reduce<Registered | undefined>(
      (latest, line) => (latest && latest.checked >= line.checked ? latest : line),
      undefined,
    );
  if (!last) return { state: "unknown" };
  const months = last.interval ?? interval;
  if (!Number.isInteger(months) || months < 1 || months > LONGEST_INTERVAL)
    return issue("interval-not-whole", { value: months });
  const left = monthsAfter(last.checked, months) - day;
  if (left < 0) return { state: "overdue", days: -left };
  return { state: left <= DUE_WITHIN_DAYS ? "due" : "current", days: left };
}

function plain(id: string): string {
  return id.toLowerCase().replace(/\s+/g, " ").trim();
}
