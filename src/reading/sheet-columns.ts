import { shownValue } from "../measure/cell-value";
import { isNotATestRow } from "./not-a-test-row";
import type { SheetColumn } from "./recognition";
import type { SheetTable } from "./sheet-table";
import { unitsBelow } from "./units-row";

/** So many cells tell what a column holds. */
export const CELLS_LOOKED_AT = 200;

/** The columns of a table, each with its headers, its unit and the cells that tell what it holds. */
export function sheetColumns({ headers, titles, rows }: SheetTable): SheetColumn[] {
  const names = headers.map(shownValue);
  // A mean of readings lies off the scale's grid, and says nothing of the readings.
  const some = rows.slice(0, CELLS_LOOKED_AT).filter((row) => !isNotATestRow(row, names));
  const units = unitsBelow(rows);
  return headers.map((header, index) => ({
    headers: titles?.[index] ?? [shownValue(header)],
    unitBelow: units?.[index],
    cells: some.map((row) => row[index] ?? null),
  }));
}
