import { issue, type Issue } from "../../measure/issue";
import { exact } from "../../measure/rounding";

/** Units in which the correction table lists alcohol. */
export type AlcoholUnit = "pt" | "oz" | "L";

/** An amount of isopropyl alcohol in one of the table's own units. */
export interface AlcoholAmount {
  readonly amount: number;
  readonly unit: AlcoholUnit;
}

/**
 * ASTM C173 Table 1, correction for the effect of the alcohol, for a 0.075 ft³ bowl with a top
 * section of 1.2 times the bowl. Rows from 2.0 pt on as reproduced in a meter maker's manual (2019);
 * the rows below, which subtract nothing, from memory. Each unit has its own column: the standard's
 * litres are rounded, not converted, so an amount is looked up in the column it was measured in.
 */
export const CORRECTION_TABLE: readonly {
  readonly pt: number;
  readonly oz: number;
  readonly L: number;
  readonly subtract: number;
}[] = [
  { pt: 0.5, oz: 8, L: 0.2, subtract: 0 },
  { pt: 1, oz: 16, L: 0.5, subtract: 0 },
  { pt: 1.5, oz: 24, L: 0.7, subtract: 0 },
  { pt: 2, oz: 32, L: 0.9, subtract: 0 },
  { pt: 3, oz: 48, L: 1.4, subtract: 0.3 },
  { pt: 4, oz: 64, L: 1.9, subtract: 0.6 },
  { pt: 5, oz: 80, L: 2.4, subtract: 0.9 },
];

/** The least amount of alcohol that is corrected for; less changes the result by under 0.125 %. */
export const LEAST_CORRECTED: Readonly<Record<AlcoholUnit, number>> = { pt: 2.5, oz: 40, L: 1.2 };

/** Where the table ends. */
export const TABLE_END: Readonly<Record<AlcoholUnit, number>> = { pt: 5, oz: 80, L: 2.4 };

/** What to subtract for the alcohol, and whether it was read between two rows of the table. */
export interface AlcoholCorrection {
  readonly subtract: number;
  readonly interpolated: boolean;
}

/**
 * The correction for the alcohol, in % of air, to subtract from the final meter reading.
 *
 * Between two rows the correction is interpolated in a straight line, in the column of the unit.
 *
 * @param alcohol Amount of alcohol added, 0 or more.
 * @returns % to subtract, and whether it lies between rows. The issue `alcohol-negative` or
 *   `alcohol-beyond-table` where there is no correction.
 * @see ASTM C173, Table 1.
 */
export function alcoholCorrection({ amount, unit }: AlcoholAmount): AlcoholCorrection | Issue {
  if (amount < 0) return issue("alcohol-negative", { value: amount });
  if (amount > TABLE_END[unit]) {
    return issue("alcohol-beyond-table", { value: amount, unit, end: TABLE_END[unit] });
  }
  if (amount < LEAST_CORRECTED[unit]) return { subtract: 0, interpolated: false };
  const upper = CORRECTION_TABLE.findIndex((row) => row[unit] >= amount);
  const above = CORRECTION_TABLE[upper]!;
  if (above[unit] === amount) return { subtract: above.subtract, interpolated: false };
  const below = CORRECTION_TABLE[upper - 1]!;
  const share = (amount - below[unit]) / (above[unit] - below[unit]);
  const subtract = exact(below.subtract + share * (above.subtract - below.subtract));
  return { subtract, interpolated: true };
}
