import { isBlank, type CellValue } from "../measure/cell-value";
import { isNumber } from "./columns-of-tests";
import { READING_FIELDS } from "./fields";
import type { Cells } from "./labelled-value";
import { fieldSaidBy } from "./labels";
import type { SheetLayout } from "./layout";
import { limitsInLine } from "./limits-in-a-line";
import type { ReadingOptions } from "./read-table";
import {
  AIR_LIMITS,
  limitsBelow,
  saidOnce,
  type RowsBesideTests,
  type SaidOnce,
} from "./said-once";
import type { SheetReading } from "./sheet-reading";

/** Of a table below another, and of what stands below the tests. */
const MOST_ROWS = 12;

/** Rows at the end of a table that may be written below it. */
const MOST_BELOW = 3;

/** Labels and values of limits in a row. */
const MOST_IN_A_ROW = 4;

const NOTHING_SAID: SaidOnce = { said: [], open: [] };

/**
 * What stands once for the tests of a table: above its header, and where no limits stand there, below its
 * last test.
 */
export function saidBesideTests(
  read: SheetReading,
  { table, headerRow }: SheetLayout,
  head: RowsBesideTests | undefined,
  options: ReadingOptions,
): SaidOnce {
  const told = head ? saidOnce(head, options) : NOTHING_SAID;
  const above = isOfSections(read, table.rows) ? withoutLimits(told) : told;
  if (above.said.some(({ field }) => AIR_LIMITS.has(field))) return above;
  const foot = rowsBelowTests(read, table.rows, headerRow);
  const below = foot ? limitsBelow(foot, options) : NOTHING_SAID;
  return { said: [...above.said, ...below.said], open: above.open };
}

/** Whether titles between the tests say limits: then those at the head are of the first tests only. */
function isOfSections({ records }: SheetReading, rows: Cells): boolean {
  const between = records.slice(0, -MOST_BELOW).filter(({ blank }) => blank);
  return between.some(({ record }) => rows[record]!.some((cell) => limitsInLine(cell)));
}

/** What stands at the head but the limits, which cannot be told of which tests they are. */
function withoutLimits({ said, open }: SaidOnce): SaidOnce {
  const limits = said.filter(({ field }) => AIR_LIMITS.has(field));
  return {
    said: said.filter(({ field }) => !AIR_LIMITS.has(field)),
    open: [
      ...open,
      ...limits.map(({ field, header, place }) => ({ fields: [field], header, place })),
    ],
  };
}

/** The few rows between a blank one and a table: what stands further up may be another table. */
export function rowsRightAbove(block: Cells, top: number): RowsBesideTests | undefined {
  for (let from = top; from > Math.max(0, top - MOST_ROWS); from--) {
    if (block[from - 1]!.every(isBlank)) return { rows: block.slice(from, top), from };
  }
  return undefined;
}

/** "Low limit, 4.5" in the first columns, where a test has its name and a reading. */
function saysLimits(row: readonly CellValue[]): boolean {
  const filled = row.filter((cell) => !isBlank(cell));
  const field = filled.length <= MOST_IN_A_ROW ? fieldSaidBy(filled[0]) : undefined;
  return field !== undefined && AIR_LIMITS.has(field);
}

/** The few rows behind the last one with a reading. */
function rowsBelowTests(
  { columns, headedAgain }: SheetReading,
  rows: Cells,
  headerRow: number,
): RowsBesideTests | undefined {
  if (headedAgain) return undefined;
  const readings = READING_FIELDS.flatMap((field) => columns[field]?.index ?? []);
  const isRead = (row: readonly CellValue[]) =>
    readings.some((at) => isNumber(row[at] ?? null)) && !saysLimits(row);
  let last = rows.length - 1;
  const least = Math.max(0, rows.length - MOST_ROWS);
  while (last >= least && !isRead(rows[last]!)) last--;
  const isFoot = last >= least && last < rows.length - 1;
  return isFoot ? { rows: rows.slice(last + 1), from: headerRow + last + 2 } : undefined;
}
