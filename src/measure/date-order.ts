import type { CellValue } from "./cell-value";

/** Which of the first two numbers of a date is the day. */
export type DateOrder = "day first" | "month first";

const NUMBERS = /^\s*(\d{1,2})([-/.])(\d{1,2})\2(?:\d{4}|\d{2})(?!\d)/;
/** What heads dates where they are written with points and the day first. */
const DAY_BEFORE_POINT = /datum/i;

/** How the dates of a column are written, as far as they show it. */
export interface DatesOfColumn {
  /** Absent where no date of the column shows it, or some show the one and some the other. */
  readonly order?: DateOrder;
  /** The order of dates written with points. */
  readonly withPoints?: DateOrder;
}

/**
 * The order in which the dates of a column are written, where some of them can only be read in one:
 * 13/05/2026 has the day first, 5/13/2026 the month.
 */
export function datesOfColumn(cells: Iterable<CellValue>, header = ""): DatesOfColumn {
  let day = false;
  let month = false;
  for (const cell of cells) {
    if (typeof cell !== "string") continue;
    const found = NUMBERS.exec(cell);
    if (!found) continue;
    const [one, other] = [Number(found[1]), Number(found[3])];
    if (one > 12 && other <= 12) day = true;
    if (other > 12 && one <= 12) month = true;
  }
  const order = day === month ? undefined : day ? "day first" : "month first";
  const byHeader = !month && DAY_BEFORE_POINT.test(header) ? "day first" : undefined;
  return { order, withPoints: order ?? byHeader };
}
