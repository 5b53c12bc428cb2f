import { checkTableInSteps } from "../../fieldsheet/check-table";
import type { Finding } from "../../fieldsheet/rule";
import type { CheckResult, RowResult } from "../../fieldsheet/check-result";
import { recogniseColumns } from "../../reading/columns";
import { findTable, type SheetLayout } from "../../reading/layout";
import type { Columns } from "../../reading/column-place";
import type { CellPlace, ReadArea } from "../../hosts/sheet-host";
import { isBlank } from "../../measure/cell-value";
import type { DecimalMark } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import { typedNumber } from "./typed-limits";

/** What the user gives with a check. */
export interface GivenWithCheck {
  /** Specification limits in % as typed; used where the sheet has none of its own. */
  readonly low: string;
  readonly high: string;
  readonly decimal: DecimalMark;
}

/** An area of the sheet with what the check says about it. */
export interface CheckedArea extends SheetLayout {
  readonly read: ReadArea;
  readonly decimal: DecimalMark;
  readonly result: CheckResult;
}

/**
 * Checks what was read from a sheet, in steps, each of which yields the share that is done.
 *
 * @throws Problem as `findTable` and `checkTable`, `pane-no-tests`, and those of a limit that is not
 *   a number.
 */
export function* checkAreaInSteps(
  read: ReadArea,
  given: GivenWithCheck,
): Generator<number, CheckedArea> {
  const layout = findTable(read.values);
  const { decimal } = given;
  if (layout.table.rows.every((row) => row.every(isBlank))) throw new Problem("pane-no-tests");
  const missing = missingLimits(recogniseColumns(layout.table.headers));
  const limit = (which: "low" | "high") =>
    missing.includes(which) ? typedNumber(given[which], say(`pane-${which}`), decimal) : undefined;
  const options = { low: limit("low"), high: limit("high"), decimal, headerRow: layout.headerRow };
  return { ...layout, read, decimal, result: yield* checkTableInSteps(layout.table, options) };
}

/** The limits that a sheet does not hold, so that they may be given. */
export function missingLimits(columns: Columns): ("low" | "high")[] {
  if (columns.target && columns.tolerance) return [];
  return (["low", "high"] as const).filter((which) => !columns[which]);
}

/** The cell of a finding; that of the headers for the sheet as a whole. */
export function placeOf(
  { read, result }: CheckedArea,
  { row, field, column }: Pick<Finding, "row" | "field" | "column">,
): CellPlace {
  const place = result.reading.placeOf(row, field);
  const { sheetId, row: top, column: left } = read.area;
  return { sheetId, row: top + place.row, column: left + (column ?? place.column) };
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
