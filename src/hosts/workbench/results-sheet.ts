import { BooleanNumber, type ICellData } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { SheetLook } from "../sheet-host";
import { shownValue, type CellValue } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { freeSheetName } from "../sheet-name";
import { cellHolding } from "./cell-content";
import { openWorkbook, type Sheet } from "./workbook";

type Table = readonly (readonly CellValue[])[];

const SPARE = 20;
/** In pixels: of a character of the usual font, of the space around a text, of the widest column. */
const CHARACTER = 8;
const PADDING = 16;
const WIDEST = 480;
/** Characters of a column that is not said to be wider or narrower. */
const USUAL = 9;

/**
 * Writes a table, with its header row first, to a new sheet and shows it.
 *
 * @returns The name of the sheet: the wished one, with a number where that is taken.
 */
export function writeResults(api: FUniver, wished: string, table: Table, look?: SheetLook): string {
  const taken = openWorkbook(api)
    .getSheets()
    .map((sheet) => sheet.getSheetName());
  const name = freeSheetName(wished, taken);
  newSheetHolding(api, name, table, look);
  return name;
}

/** Writes a table to a new sheet with exactly this name and leaves the sheet in front as it is. */
export function addSheetNamed(api: FUniver, name: string, table: Table, look?: SheetLook): void {
  const workbook = openWorkbook(api);
  const isThere = (sheet: Sheet) => sheet.getSheetName().toLowerCase() === name.toLowerCase();
  if (workbook.getSheets().some(isThere)) throw new Problem("changed-meanwhile");
  const front = workbook.getActiveSheet();
  newSheetHolding(api, name, table, look);
  workbook.setActiveSheet(front);
}

/** Puts a table, with its header row first, on a new sheet. */
export function newSheetHolding(api: FUniver, name: string, table: Table, look?: SheetLook): void {
  const bold = new Set(look?.bold ?? [0]);
  const columns = Math.max(1, ...table.map((row) => row.length));
  const cells = table.map((row, r) =>
    row.map((value) => (bold.has(r) ? heading(value) : cellHolding(value))),
  );
  openWorkbook(api).insertSheet(name, {
    sheet: {
      rowCount: table.length + SPARE,
      columnCount: columns + SPARE,
      columnData: Object.fromEntries(
        Array.from({ length: columns }, (_, i) => [
          i,
          { w: look ? pixels(look.widths[i] ?? USUAL) : widthOf(table, i) },
        ]),
      ),
      cellData: Object.fromEntries(cells.map((row, r) => [r, Object.fromEntries(row.entries())])),
    },
  });
}

function heading(value: CellValue): ICellData {
  return { ...cellHolding(value), s: { bl: BooleanNumber.TRUE } };
}

/** Wide enough for what stands in a column, within reason. */
function widthOf(table: readonly (readonly CellValue[])[], column: number): number {
  const longest = table.reduce((most, row) => Math.max(most, shownValue(row[column]).length), 0);
  return Math.min(pixels(longest), WIDEST);
}

function pixels(characters: number): number {
  return PADDING + characters * CHARACTER;
}
