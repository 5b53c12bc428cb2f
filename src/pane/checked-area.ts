import { checkTable } from "../fieldsheet/check-table";
import type { CheckResult, RowResult } from "../fieldsheet/check-result";
import { findTable, type SheetLayout } from "../fieldsheet/layout";
import type { CheckOptions } from "../fieldsheet/sheet-table";
import type { CellPlace, ReadArea } from "../hosts/sheet-host";

/** An area of the sheet with what the check says about it. */
export interface CheckedArea extends SheetLayout {
  readonly read: ReadArea;
  readonly options: CheckOptions;
  readonly result: CheckResult;
}

/**
 * Checks what was read from a sheet.
 *
 * @throws Problem as `findTable` and `checkTable`.
 */
export function checkArea(read: ReadArea, options: CheckOptions): CheckedArea {
  const layout = findTable(read.values);
  return { ...layout, read, options, result: checkTable(layout.table, options) };
}

/**
 * The cell of a finding.
 *
 * @param row Position in the table; null for the sheet as a whole, which leads to the header.
 * @param column Position in the table; null for the row as a whole, which leads to its first cell.
 */
export function placeOf(
  { read, headerRow }: CheckedArea,
  { row, column }: { readonly row: number | null; readonly column: number | null },
): CellPlace {
  const { sheetId, row: top, column: left } = read.area;
  return {
    sheetId,
    row: top + headerRow + (row === null ? 0 : row + 1),
    column: left + (column ?? 0),
  };
}

/** The row of the table in which a cell of the sheet lies; `undefined` outside the table. */
export function rowAt(checked: CheckedArea, place: CellPlace): RowResult | undefined {
  const { area } = checked.read;
  const inside =
    place.sheetId === area.sheetId &&
    place.column >= area.column &&
    place.column < area.column + area.columns;
  return inside ? checked.result.rows[place.row - area.row - checked.headerRow - 1] : undefined;
}
