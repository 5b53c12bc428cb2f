import { isBlank, type CellValue } from "../measure/cell-value";
import type { FieldId } from "./fields";
import type { Columns } from "./column-place";

type Rows = readonly (readonly CellValue[])[];

/** What a test is known by; a row that sums up tests has none of it. */
const KNOWN_BY: readonly FieldId[] = ["sample", "load", "date"];
/** A mean is often written with one figure after the point. */
const ROUNDED = 0.051;
const FEWEST_TESTS = 2;
const FEWEST_NUMBERS = 2;

/**
 * The last row with something in it, where it may be a total or a mean that nobody has named: nothing
 * in it names a test, as every row above does, and each of its numbers is the sum or the mean of those above.
 *
 * @param blank For each row whether it holds no test anyway.
 */
export function rowThatMaySumUp(
  rows: Rows,
  columns: Columns,
  blank: readonly boolean[],
): number | undefined {
  const names = KNOWN_BY.flatMap((field) => columns[field]?.index ?? []);
  const last = blank.lastIndexOf(false);
  const isUnnamed = (row: number) => names.every((at) => isBlank(rows[row]![at]));
  if (names.length === 0 || last < 0 || !isUnnamed(last)) return undefined;
  const above = rows.slice(0, last).filter((_, row) => !blank[row]);
  if (above.length < FEWEST_TESTS) return undefined;
  if (above.some((row) => names.every((at) => isBlank(row[at])))) return undefined;
  const filled = rows[last]!.flatMap((cell, at) => (isBlank(cell) ? [] : [{ cell, at }]));
  const sumsUp = filled.every(({ cell, at }) => isSumOrMean(cell, at, above));
  return sumsUp && filled.length >= FEWEST_NUMBERS ? last : undefined;
}

function isSumOrMean(cell: CellValue, at: number, above: Rows): boolean {
  if (typeof cell !== "number") return false;
  const numbers = above.map((row) => row[at]).filter((each) => typeof each === "number");
  if (numbers.length === 0) return false;
  const sum = numbers.reduce((total, each) => total + each, 0);
  return Math.abs(cell - sum) < ROUNDED || Math.abs(cell - sum / numbers.length) < ROUNDED;
}
