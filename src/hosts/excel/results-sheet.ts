import type { CellValue } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { freeSheetName } from "../sheet-name";
import { pieces } from "./chunk-size";
import { inExcel } from "./in-excel";
import { writable } from "./writable";

/** Rows of an Excel sheet. */
const MOST_ROWS = 1_048_576;

type Table = readonly (readonly CellValue[])[];

/** Adds to a sheet what goes with its table; the last of it is done with the next sync. */
type Finish = (sheet: Excel.Worksheet, table: Excel.Range) => Promise<void> | void;

/**
 * Writes a table, with its header row first, to a new sheet and shows it.
 *
 * @param name The name wanted; where a sheet has it already, the new one gets a number behind it.
 * @param finish What else to put on the sheet.
 * @returns The name of the new sheet.
 * @throws Problem `results-too-long`.
 */
export async function writeNewSheet(name: string, table: Table, finish?: Finish): Promise<string> {
  if (table.length > MOST_ROWS) throw new Problem("results-too-long", { rows: table.length });
  const added = await addSheet((taken) => freeSheetName(name, taken));
  return filled(added, table, async (sheet, range) => {
    await finish?.(sheet, range);
    sheet.activate();
  });
}

/**
 * Writes a table to a new sheet with exactly this name and leaves the sheet in front as it is.
 *
 * @throws Problem `changed-meanwhile` where there is such a sheet.
 */
export async function addSheetNamed(name: string, table: Table, finish?: Finish): Promise<void> {
  await filled(await addSheet(() => name), table, finish);
}

interface AddedSheet {
  readonly id: string;
  readonly name: string;
}

async function filled(added: AddedSheet, table: Table, finish?: Finish): Promise<string> {
  try {
    await fillSheet(added.id, table, finish);
  } catch (error) {
    await forgetSheet(added.id);
    throw error;
  }
  return added.name;
}

function addSheet(nameBeside: (taken: readonly string[]) => string): Promise<AddedSheet> {
  return inExcel(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    const taken = worksheets.items.map((sheet) => sheet.name);
    const sheet = worksheets.add(nameBeside(taken));
    sheet.load("id,name");
    await context.sync();
    return { id: sheet.id, name: sheet.name };
  });
}

function fillSheet(id: string, table: Table, finish?: Finish): Promise<void> {
  const columns = table.reduce((most, row) => Math.max(most, row.length), 1);
  return inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(id);
    let row = 0;
    for (const piece of pieces(table.map((cells) => writable(cells, columns)))) {
      sheet.getRangeByIndexes(row, 0, piece.length, columns).values = piece;
      row += piece.length;
      // One request for each piece, because Excel on the web refuses larger ones.
      // eslint-disable-next-line office-addins/no-context-sync-in-loop
      await context.sync();
    }
    const header = sheet.getRangeByIndexes(0, 0, 1, columns);
    header.format.font.bold = true;
    header.getEntireColumn().format.autofitColumns();
    await finish?.(sheet, sheet.getRangeByIndexes(0, 0, Math.max(1, table.length), columns));
    await context.sync();
  });
}

/** A half-written sheet is taken away again; that it may stay matters less than why it failed. */
async function forgetSheet(id: string): Promise<void> {
  try {
    await inExcel(async (context) => {
      context.workbook.worksheets.getItem(id).delete();
      await context.sync();
    });
  } catch {
    return;
  }
}
