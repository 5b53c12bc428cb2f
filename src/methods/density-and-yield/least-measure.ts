import type { AggregateSize } from "../../measure/aggregate-size";
import { M3_PER_FT3 } from "../../measure/conversion";

/** The least volume of a measure, in either system. */
export interface LeastMeasure {
  readonly ft3: number;
  readonly L: number;
}

/**
 * Least volume of the measure for each largest nominal size of aggregate, ASTM C138 Table 1 (from
 * memory). The two systems are the standard's own pairs, not conversions.
 */
export const LEAST_MEASURE_TABLE = [
  { in: 1, mm: 25, ft3: 0.2, L: 6 },
  { in: 1.5, mm: 37.5, ft3: 0.4, L: 11 },
  { in: 2, mm: 50, ft3: 0.5, L: 14 },
  { in: 3, mm: 75, ft3: 1, L: 28 },
  { in: 4.5, mm: 112, ft3: 2.5, L: 70 },
  { in: 6, mm: 150, ft3: 3.5, L: 100 },
] as const;

/**
 * The least volume that a measure must have for an aggregate.
 *
 * @returns The volume in both units; `undefined` beyond the table.
 */
export function leastMeasure({ size, unit }: AggregateSize): LeastMeasure | undefined {
  return LEAST_MEASURE_TABLE.find((row) => size <= row[unit]);
}

/** Whether a measure is too small by both columns of the table, which are rounded differently. */
export function isTooSmall(litres: number, { ft3, L }: LeastMeasure): boolean {
  // A measure is known to about 0.1 %, so that 5.66 L is still 0.2 ft³.
  return litres < 0.999 * Math.min(L, ft3 * M3_PER_FT3 * 1000);
}
