import { cellValueFrom, type CellValue } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import type { CellArea } from "../sheet-host";
import { tellProgress } from "./called-off";
import { bytesOfRow, firstRows, nextRows } from "./chunk-size";
import { isTooMuchToRead } from "./excel-errors";

/** Cells that are read at most: 20 columns of a full sheet. */
const MOST_CELLS = 21_000_000;

/**
 * Reads the values of an area, piece by piece, each piece as large as Excel hands over safely.
 *
 * @param progress Told the rows read so far.
 * @throws Problem `selection-too-large`.
 */
export async function readValues(
  context: Excel.RequestContext,
  area: CellArea,
  progress?: (done: number) => void,
): Promise<CellValue[][]> {
  const { rows, columns } = area;
  if (rows * columns > MOST_CELLS) {
    throw new Problem("selection-too-large", { rows, columns, limit: MOST_CELLS });
  }
  const values: CellValue[][] = [];
  let bytes = 0;
  let size = firstRows(columns);
  while (values.length < rows) {
    const piece = await readPiece(context, area, values.length, size);
    if (!piece) {
      size = Math.max(1, Math.floor(size / 2));
      continue;
    }
    for (const row of piece) {
      bytes += bytesOfRow(row);
      values.push(row.map(cellValueFrom));
    }
    size = nextRows(bytes, values.length * columns, columns);
    tellProgress(progress, values.length);
  }
  return values;
}

/** The values of some rows; `undefined` where they are more than Excel hands over in one piece. */
async function readPiece(
  context: Excel.RequestContext,
  area: CellArea,
  from: number,
  size: number,
): Promise<unknown[][] | undefined> {
  const rows = Math.min(size, area.rows - from);
  const range = context.workbook.worksheets
    .getItem(area.sheetId)
    .getRangeByIndexes(area.row + from, area.column, rows, area.columns);
  range.load("values");
  try {
    await context.sync();
  } catch (error) {
    if (rows > 1 && isTooMuchToRead(error)) return undefined;
    throw error;
  }
  const values = range.values as unknown[][] | null;
  range.untrack();
  if (values === null && rows === 1) throw new Problem("too-much-at-once");
  return values ?? undefined;
}
