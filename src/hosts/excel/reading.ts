import type { DecimalMark } from "../../measure/number-from-cell";
import { areaAddress } from "../cell-address";
import type { CellPlace, ReadArea, ReadScope } from "../sheet-host";
import { trimmed } from "../trimmed";
import { askDecimalMark } from "./decimal-mark";
import { inExcel } from "./in-excel";
import { locate, locateAgain, type Located } from "./locate";
import { readValues } from "./read-values";

/** Rows and columns of an Excel sheet. */
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;

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
  const around = () => askAround(context, area, totals);
  let filled = around();
  const values = await readValues(context, area, progress);
  if (!isThere(filled)) {
    // It went along with a piece of the values that was more than Excel hands over.
    filled = around();
    await context.sync();
  }
  const [below] = spans(filled.below);
  return {
    ...{ ...read, values },
    below: below && { row: below.rowIndex, rows: below.rowCount },
    beside: spans(filled.beside).map(({ columnIndex, columnCount }) => {
      return { column: columnIndex, columns: columnCount };
    }),
  };
}

/** What is filled around an area. */
interface Around {
  readonly below: readonly Excel.Range[];
  readonly beside: readonly Excel.Range[];
}

/** Asks, along with the values, what stands further below in the same columns, and beside in the same rows. */
function askAround(
  context: Excel.RequestContext,
  { sheetId, row, rows, column, columns }: Located["area"],
  totals: number,
): Around {
  const sheet = context.workbook.worksheets.getItem(sheetId);
  const asked = (...block: [row: number, column: number, rows: number, columns: number]) => {
    if (block[2] <= 0 || block[3] <= 0) return [];
    const filled = sheet.getRangeByIndexes(...block).getUsedRangeOrNullObject(true);
    filled.load("rowIndex,rowCount,columnIndex,columnCount");
    return [filled];
  };
  const [below, right] = [row + rows + totals, column + columns];
  return {
    below: asked(below, column, MOST_ROWS - below, columns),
    beside: [...asked(row, 0, rows, column), ...asked(row, right, rows, MOST_COLUMNS - right)],
  };
}

/** Those that hold something. */
function spans(asked: readonly Excel.Range[]): readonly Excel.Range[] {
  return asked.filter((range) => !range.isNullObject);
}

/** Whether all answers have come. */
function isThere({ below, beside }: Around): boolean {
  try {
    return [...below, ...beside].every((range) => range.isNullObject || range.rowIndex >= 0);
  } catch {
    return false;
  }
}
