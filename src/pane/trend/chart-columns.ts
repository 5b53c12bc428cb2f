import type { TrendPoint } from "../../acceptance/trend";

/** Neighbouring points that are drawn as one, since there is no room for each. */
export interface ChartColumn {
  /** The first and the last of them, counted from 1. */
  readonly from: number;
  readonly to: number;
  readonly lowest: number;
  readonly highest: number;
  readonly mean: number;
  readonly below: boolean;
  readonly above: boolean;
}

/**
 * Points gathered into columns of as many neighbours as it takes; the last one may hold fewer.
 *
 * @param most How many columns there is room for, 1 or more.
 */
export function chartColumns(points: readonly TrendPoint[], most: number): ChartColumn[] {
  const size = Math.ceil(points.length / most);
  const columns: ChartColumn[] = [];
  for (let start = 0; start < points.length; start += size) {
    const part = points.slice(start, start + size);
    const values = part.map(({ value }) => value);
    columns.push({
      from: start + 1,
      to: start + part.length,
      lowest: Math.min(...values),
      highest: Math.max(...values),
      mean: values.reduce((sum, value) => sum + value, 0) / values.length,
      below: part.some(({ verdict }) => verdict === "below"),
      above: part.some(({ verdict }) => verdict === "above"),
    });
  }
  return columns;
}
