import { checkTestsInSteps } from "../../fieldsheet/check-table";
import type { Finding } from "../../fieldsheet/finding";
import type { CheckResult } from "../../fieldsheet/check-result";
import type { TestResult } from "../../fieldsheet/test-result";
import { recognise } from "../../reading/recognise";
import type { SheetColumn } from "../../reading/recognition";
import type { Setup } from "../../reading/setup/setup";
import type { FieldId } from "../../reading/fields";
import type { SheetLayout } from "../../reading/layout";
import { findTestsIn, type TestsInBlock } from "../../reading/read-sheet";
import type { Columns } from "../../reading/column-place";
import type { CellPlace, ReadArea } from "../../hosts/sheet-host";
import { isBlank, shownValue } from "../../measure/cell-value";
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
  /** From which year the workbook counts its days. */
  readonly datesFrom?: 1900 | 1904;
  /** What is kept in the workbook, with what was chosen since. */
  readonly setup?: Setup;
}

/** An area of the sheet with what the check says about it; forms have the layout of a table of them. */
export interface CheckedArea extends SheetLayout {
  readonly read: ReadArea;
  readonly decimal: DecimalMark;
  /** When it was checked. */
  readonly at: Date;
  readonly result: CheckResult;
}

/**
 * Checks what was read from a sheet, in steps, each of which yields the share that is done.
 *
 * @throws Problem as `findTestsIn` and `checkTestsInSteps`, `no-tests-below`, and those of a limit that is not
 *   a number.
 */
export function* checkAreaInSteps(
  read: ReadArea,
  given: GivenWithCheck,
): Generator<number, CheckedArea> {
  const found = Problem.unless(findTestsIn(read.values, given.setup?.columns));
  const layout = layoutOf(found);
  const { decimal, datesFrom, setup } = given;
  if (layout.table.rows.every((row) => row.every(isBlank))) throw new Problem("no-tests-below");
  const missing = missingLimits(columnsOf(layout, setup));
  const limit = (which: "low" | "high") =>
    missing.includes(which) ? typedNumber(given[which], say(`pane-${which}`), decimal) : undefined;
  const typed = { low: limit("low"), high: limit("high") };
  // What is typed here for the whole sheet goes behind what the sheet says, and what is kept for a mix.
  const options = { otherwise: typed, decimal, datesFrom, setup };
  const result = Problem.unless(yield* checkTestsInSteps(found, options));
  return { ...layout, read, decimal, at: new Date(), result };
}

/** The columns of a layout with the titles above them. */
export function sheetColumnsOf({ table, headers }: SheetLayout): readonly SheetColumn[] {
  return table.headers.map((header, index) => ({
    headers: headers[index] ?? [shownValue(header)],
    cells: [],
  }));
}

function columnsOf(layout: SheetLayout, setup: Setup | undefined): Columns {
  return recognise(sheetColumnsOf(layout), setup?.columns).columns;
}

function layoutOf(found: TestsInBlock): SheetLayout {
  if ("layout" in found) return found.layout;
  const { headers, labels, rows } = found.forms;
  const headerRow = Math.min(...labels.map(({ row }) => row));
  return { table: { headers, rows }, headerRow, headers: headers.map((header) => [header]) };
}

/** The limits that a sheet does not hold, so that they may be given. */
export function missingLimits(columns: Columns): ("low" | "high")[] {
  if (columns.target && columns.tolerance) return [];
  return (["low", "high"] as const).filter((which) => !columns[which]);
}

/** The cell of a finding; that of the headers for the sheet as a whole. */
export function placeOf(
  { read, result }: CheckedArea,
  { record, field, column, place: own }: Pick<Finding, "record" | "field" | "column" | "place">,
): CellPlace {
  const place = own ?? result.reading.placeOf(record, field);
  const { sheetId, row: top, column: left } = read.area;
  return { sheetId, row: top + place.row, column: left + (column ?? place.column) };
}

/** The test to which a cell of the sheet belongs, in a table the one of its row; `undefined` outside. */
export function rowAt(checked: CheckedArea, place: CellPlace): TestResult | undefined {
  const { read, result, headerRow } = checked;
  const { area } = read;
  const inside =
    place.sheetId === area.sheetId &&
    place.column >= area.column &&
    place.column < area.column + area.columns;
  if (!inside) return undefined;
  const { forms, columns, placeOf: placeIn, together } = result.reading;
  const row = place.row - area.row - headerRow - 1;
  if (forms === undefined) return result.results[together?.testOf(row) ?? row];
  const fields = Object.keys(columns) as FieldId[];
  return result.results.find(({ record }) =>
    fields.some((field) => {
      const at = placeIn(record, field);
      return at.row === place.row - area.row && at.column === place.column - area.column;
    }),
  );
}
