import type { DecimalMark } from "../../measure/number-from-cell";
import { areaAddress } from "../cell-address";
import type { CellPlace, ReadArea, ReadScope } from "../sheet-host";
import { trimmed } from "../trimmed";
import { askDecimalMark } from "./decimal-mark";
import { inExcel } from "./in-excel";
import { locate, locateAgain, type Located } from "./locate";
import { readValues } from "./read-values";

/** Rows of an Excel sheet. */
const MOST_ROWS = 1_048_576;

/** What was read, and how decimals are written there: whoever reads wants both. */
export interface Reading {
  readonly read: ReadArea;
  readonly decimal: DecimalMark;
}

type Progress = (done: number) => void;

/** Reads the selection or the table around it. */
export function readScope(
  scope: ReadScope,
  progress?: Progress,
  around?: CellPlace,
): Promise<Reading> {
  return inExcel(async (context) => {
    const decimal = askDecimalMark(context);
    const found = await locate(context, scope, around);
    return { read: await readLocated(context, found, progress), decimal: decimal() };
  });
}

/** Reads again what was read before, as far as it goes now. */
export function readAgain(before: ReadArea, progress?: Progress): Promise<ReadArea> {
  return inExcel(async (context) => {
    const found = await locateAgain(context, before);
    return trimmed(await readLocated(context, found, progress));
  });
}

async function readLocated(
  context: Excel.RequestContext,
  { area, totals, cut }: Located,
  progress?: Progress,
): Promise<ReadArea> {
  const read = { area, address: areaAddress(area), cut };
  const from = area.row + area.rows + totals;
  if (from >= MOST_ROWS) return { ...read, values: await readValues(context, area, progress) };
  let filled = askBelow(context, area, from);
  const values = await readValues(context, area, progress);
  if (!isThere(filled)) {
    // It went along with a piece of the values that was more than Excel hands over.
    filled = askBelow(context, area, from);
    await context.sync();
  }
  const below = filled.isNullObject ? undefined : { row: filled.rowIndex, rows: filled.rowCount };
  return { ...read, values, below };
}

/** Asks, along with the values, what stands further below in the same columns. */
function askBelow(
  context: Excel.RequestContext,
  { sheetId, column, columns }: Located["area"],
  from: number,
): Excel.Range {
  const filled = context.workbook.worksheets
    .getItem(sheetId)
    .getRangeByIndexes(from, column, MOST_ROWS - from, columns)
    .getUsedRangeOrNullObject(true);
  filled.load("rowIndex,rowCount");
  return filled;
}

/** Whether an answer has come. */
function isThere(range: Excel.Range): boolean {
  try {
    return range.isNullObject || range.rowIndex >= 0;
  } catch {
    return false;
  }
}
