import { BooleanNumber, type ICellData } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { SheetLook } from "../sheet-host";
import { shownValue, type CellValue } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { atOnce, each, inSlices, type Pause, type Steps } from "../in-slices";
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
export async function writeResults(
  api: FUniver,
  wished: string,
  table: Table,
  look: SheetLook | undefined,
  pause: Pause,
): Promise<string> {
  const taken = openWorkbook(api)
    .getSheets()
    .map((sheet) => sheet.getSheetName());
  const name = freeSheetName(wished, taken);
  const sheet = await inSlices(sheetInSteps(table, look), pause);
  // The last moment at which it can be stopped.
  await pause(1);
  openWorkbook(api).insertSheet(name, { sheet });
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
  openWorkbook(api).insertSheet(name, { sheet: atOnce(sheetInSteps(table, look)) });
}

/** What a sheet holds that shows a table. */
function* sheetInSteps(table: Table, look?: SheetLook): Steps<object> {
  const bold = new Set(look?.bold ?? [0]);
  const longest: number[] = [0];
  const rows = yield* each(table, (row, r) => {
    row.forEach((value, column) => {
      longest[column] = Math.max(longest[column] ?? 0, shownValue(value).length);
    });
    const cells = row.map((value) => (bold.has(r) ? heading(value) : cellHolding(value)));
    return [r, Object.fromEntries(cells.entries())] as const;
  });
  const width = (column: number) =>
    look ? pixels(look.widths[column] ?? USUAL) : Math.min(pixels(longest[column]!), WIDEST);
  return {
    rowCount: table.length + SPARE,
    columnCount: longest.length + SPARE,
    columnData: Object.fromEntries(longest.map((_, i) => [i, { w: width(i) }])),
    cellData: Object.fromEntries(rows),
  };
}

function heading(value: CellValue): ICellData {
  return { ...cellHolding(value), s: { bl: BooleanNumber.TRUE } };
}

function pixels(characters: number): number {
  return PADDING + characters * CHARACTER;
}
