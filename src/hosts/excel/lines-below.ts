import { cellValueFrom, type CellValue } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { sameRows } from "../same-values";
import type { LinesFor, ReadArea } from "../sheet-host";
import { codeOf } from "./excel-errors";
import { inExcel } from "./in-excel";
import { readNamed } from "./named-sheet";
import { writable } from "./writable";

/** So often it is begun anew because somebody else changes the sheet at that moment. */
const MOST_ATTEMPTS = 3;

/** The headings of a table stand within so many rows. */
const HEADING_ROWS = 50;

/** A request carries at most so many lines, far below what Excel on the web takes. */
const LINES_IN_A_REQUEST = 2_000;

/**
 * Adds lines below all that stands on a sheet, which is made where there is none.
 *
 * The lines get rows of their own, put in below the last one that holds something: whatever somebody else
 * has written there meanwhile moves down. Where the columns have moved meanwhile, the rows are taken out
 * again and it is begun anew.
 *
 * @returns What stands on the sheet then.
 */
export async function addLinesBelow(name: string, lines: LinesFor): Promise<ReadArea> {
  for (let attempt = 1; ; attempt += 1) {
    const there = await inExcel((context) => readNamed(context, name));
    const added = lines(there);
    const written = there
      ? added.length === 0 || (await putInRows(there, added))
      : await makeSheet(name);
    if (there && written) return (await inExcel((context) => readNamed(context, name))) ?? there;
    if (attempt === MOST_ATTEMPTS) throw new Problem("changed-meanwhile");
  }
}

/** Makes the sheet; its lines come next, as on one that is there. One that another has made is as good. */
async function makeSheet(name: string): Promise<boolean> {
  await inExcel(async (context) => {
    context.workbook.worksheets.add(name);
    try {
      await context.sync();
    } catch (error) {
      if (codeOf(error) !== "ItemAlreadyExists") throw error;
    }
  });
  return false;
}

/** @returns false where the columns had moved, and nothing is left of the lines. */
async function putInRows(
  { area, values }: ReadArea,
  lines: readonly (readonly CellValue[])[],
): Promise<boolean> {
  for (let from = 0; from < lines.length; from += LINES_IN_A_REQUEST) {
    const piece = lines.slice(from, from + LINES_IN_A_REQUEST);
    const row = area.row + area.rows + from;
    const done = await putInPiece(area, values, row, piece, from === 0 && area.rows === 0);
    if (!done) return false;
  }
  return true;
}

function putInPiece(
  area: ReadArea["area"],
  values: ReadArea["values"],
  row: number,
  lines: readonly (readonly CellValue[])[],
  headed: boolean,
): Promise<boolean> {
  const columns = lines.reduce((most, line) => Math.max(most, line.length), 1);
  return inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(area.sheetId);
    const headings = askHeadings(sheet, area);
    const blank = sheet.getRangeByIndexes(row, 0, lines.length, 1).getEntireRow().insert("Down");
    // Asked for after the rows were put in, so that it is these and not those that moved down.
    const cells = sheet.getRangeByIndexes(row, area.column, lines.length, columns);
    cells.values = lines.map((line) => writable(line, columns));
    if (headed) {
      cells.getRow(0).format.font.bold = true;
      cells.getEntireColumn().format.autofitColumns();
    }
    await context.sync();
    if (!headings || sameAsRead(headings.values, values)) return true;
    blank.delete("Up");
    await context.sync();
    return false;
  });
}

/** The rows in which the headings are, asked for in the request that writes. */
function askHeadings(
  sheet: Excel.Worksheet,
  { row, column, rows, columns }: ReadArea["area"],
): Excel.Range | undefined {
  if (rows === 0) return undefined;
  const range = sheet.getRangeByIndexes(row, column, Math.min(rows, HEADING_ROWS), columns);
  range.load("values");
  return range;
}

function sameAsRead(now: unknown[][], values: ReadArea["values"]): boolean {
  const rows = now.map((line) => line.map(cellValueFrom));
  return sameRows(rows, values.slice(0, rows.length));
}
