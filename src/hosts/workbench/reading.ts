import type { FUniver } from "@univerjs/core/facade";
import { isBlank, type CellValue } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { grown, sidesCut } from "../area-around";
import { areaAddress, type Block } from "../cell-address";
import { breathe, inSlices } from "../in-slices";
import type { CellArea, CellPlace, ReadArea, ReadScope } from "../sheet-host";
import { trimmed } from "../trimmed";
import { filledBlockInSteps, type Rectangle } from "./filled-block";
import { namedTableAround } from "./named-table";
import { SheetCells } from "./sheet-cells";
import { openWorkbook, sheetWithId, type Sheet } from "./workbook";

/** So many cells are read within a few seconds. */
const MOST_CELLS = 2_000_000;
/** Rows between two looks at the clock, and how long the page may stand still meanwhile. */
const ROWS_IN_A_STEP = 500;
const SLICE_MS = 25;

/** Told the rows read so far; what it throws ends the reading. */
type Progress = (rows: number) => void;

/**
 * Reads what is selected, or the table around the selected cell: a named one, else the filled cells.
 *
 * @param around The cell whose table is meant, instead of the selected one.
 */
export async function readScope(
  api: FUniver,
  scope: ReadScope,
  progress: Progress,
  around?: CellPlace,
): Promise<ReadArea> {
  if (scope === "table" && around)
    return readTable(api, sheetWithId(api, around.sheetId), around, progress);
  const sheet = openWorkbook(api).getActiveSheet();
  const selected = sheet.getSelection()?.getActiveRangeList() ?? [];
  if (selected.length === 0) throw new Problem("selection-empty");
  if (selected.length > 1) throw new Problem("selection-in-parts");
  if (scope === "table") {
    const cell = sheet.getActiveCell();
    if (!cell) throw new Problem("selection-empty");
    return readTable(api, sheet, { row: cell.getRow(), column: cell.getColumn() }, progress);
  }
  const cells = new SheetCells(sheet);
  const used = cells.used();
  const { startRow, endRow, startColumn, endColumn } = selected[0]!.getRange();
  const block = {
    // Whole rows or columns have no first or last cell of their own.
    top: startRow || 0,
    left: startColumn || 0,
    bottom: Math.min(Number.isNaN(endRow) ? Infinity : endRow, used.bottom),
    right: Math.min(Number.isNaN(endColumn) ? Infinity : endColumn, used.right),
  };
  if (block.top > block.bottom || block.left > block.right) throw new Problem("selection-empty");
  const read = filled(await readBlock(sheet, cells, block, progress));
  return { ...read, cut: sidesCut(read.area, await blocksAround(cells, block)) };
}

/** Reads the first rows in use of every sheet that can be seen, that in front first. */
export async function readSheetTops(api: FUniver, rows: number): Promise<readonly ReadArea[]> {
  const workbook = openWorkbook(api);
  const front = workbook.getActiveSheet().getSheetId();
  const sheets = workbook
    .getSheets()
    .filter((sheet) => !sheet.isSheetHidden())
    .sort((a, b) => Number(b.getSheetId() === front) - Number(a.getSheetId() === front));
  const tops: ReadArea[] = [];
  for (const sheet of sheets) {
    const cells = new SheetCells(sheet);
    const { bottom, right } = cells.used();
    const area = areaOf(sheet, { top: 0, left: 0, bottom: Math.min(bottom, rows - 1), right });
    tops.push({ area, address: areaAddress(area), values: valuesOf(sheet, area, cells) });
    await breathe();
  }
  return tops;
}

function filled(read: ReadArea): ReadArea {
  if (read.values.every((row) => row.every(isBlank))) throw new Problem("selection-empty");
  return read;
}

/**
 * Reads again what was read before, as far as it goes now; rows and columns that are gone by now are left
 * out.
 */
export async function readAgain(
  api: FUniver,
  before: ReadArea,
  progress: Progress,
): Promise<ReadArea> {
  const { row, column, rows, columns } = before.area;
  const sheet = sheetWithId(api, before.area.sheetId);
  const cells = new SheetCells(sheet);
  const block = {
    top: row,
    left: column,
    bottom: Math.min(row + rows, sheet.getMaxRows()) - 1,
    right: Math.min(column + columns, sheet.getMaxColumns()) - 1,
  };
  if (block.top > block.bottom || block.left > block.right) throw new Problem("sheet-gone");
  const named = namedTableAround(api, sheet, row, column);
  const around = named && !before.cut ? [blockOf(named)] : await blocksAround(cells, block);
  const area = grown({ ...before.area, ...blockOf(block) }, around, before.cut ?? []);
  const read = await readBlock(sheet, cells, rectangleOf(area), progress);
  return { ...trimmed(read), cut: before.cut };
}

/** What stands in an area of a sheet. */
export function valuesOf(sheet: Sheet, area: Block, cells = new SheetCells(sheet)): CellValue[][] {
  return Array.from({ length: area.rows }, (_, row) =>
    Array.from({ length: area.columns }, (_, column) =>
      cells.at(area.row + row, area.column + column),
    ),
  );
}

async function blocksAround(cells: SheetCells, block: Rectangle): Promise<Block[]> {
  const filled = await filledAround(cells, block);
  return filled ? [blockOf(filled)] : [];
}

async function filledAround(cells: SheetCells, start: Rectangle): Promise<Rectangle | undefined> {
  const used = cells.used();
  await breathe();
  const filled = filledBlockInSteps(start, cells.isFilled.bind(cells), used);
  return inSlices(filled, breathe);
}

function blockOf({ top, left, bottom, right }: Rectangle): Block {
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

function rectangleOf({ row, column, rows, columns }: Block): Rectangle {
  return { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
}

async function readBlock(
  sheet: Sheet,
  cells: SheetCells,
  block: Rectangle,
  progress: Progress,
): Promise<ReadArea> {
  const { rows, columns } = blockOf(block);
  if (rows < 1 || columns < 1) throw new Problem("sheet-gone");
  if (rows * columns > MOST_CELLS)
    throw new Problem("selection-too-large", { rows, columns, limit: MOST_CELLS });
  const area = areaOf(sheet, block);
  const values: CellValue[][] = [];
  let since = performance.now();
  for (let row = 0; row < rows; row += ROWS_IN_A_STEP) {
    const part = { ...area, row: area.row + row, rows: Math.min(ROWS_IN_A_STEP, rows - row) };
    values.push(...valuesOf(sheet, part, cells));
    if (performance.now() - since < SLICE_MS) continue;
    progress(values.length);
    await breathe();
    since = performance.now();
  }
  await breathe();
  const used = cells.used();
  await breathe();
  return {
    ...{ area, address: areaAddress(area), values },
    below: filledBelow(cells, block, used.bottom),
    beside: filledBeside(cells, block, used.right),
  };
}

function areaOf(sheet: Sheet, block: Rectangle): CellArea {
  return { sheetId: sheet.getSheetId(), sheetName: sheet.getSheetName(), ...blockOf(block) };
}

/** The rows below a block that hold something in its columns. */
function filledBelow(
  cells: SheetCells,
  { left, bottom, right }: Rectangle,
  lastUsed: number,
): ReadArea["below"] {
  const filled = (row: number) => {
    for (let column = left; column <= right; column += 1)
      if (cells.isFilled(row, column)) return true;
    return false;
  };
  let [first, last] = [bottom + 1, lastUsed];
  while (first <= last && !filled(first)) first += 1;
  while (last >= first && !filled(last)) last -= 1;
  return first > last ? undefined : { row: first, rows: last - first + 1 };
}

/** The columns on either side of a block that hold something in its rows. */
function filledBeside(cells: SheetCells, block: Rectangle, lastUsed: number): ReadArea["beside"] {
  const filled = (column: number) => {
    for (let row = block.top; row <= block.bottom; row += 1)
      if (cells.isFilled(row, column)) return true;
    return false;
  };
  const sides = [
    [0, block.left - 1],
    [block.right + 1, lastUsed],
  ] as const;
  return sides.flatMap(([from, to]) => {
    let [first, last] = [from, to];
    while (first <= last && !filled(first)) first += 1;
    while (last >= first && !filled(last)) last -= 1;
    return first > last ? [] : [{ column: first, columns: last - first + 1 }];
  });
}

async function readTable(
  api: FUniver,
  sheet: Sheet,
  { row, column }: Pick<CellPlace, "row" | "column">,
  progress: Progress,
): Promise<ReadArea> {
  const cells = new SheetCells(sheet);
  const cell = { top: row, left: column, bottom: row, right: column };
  const block = namedTableAround(api, sheet, row, column) ?? (await filledAround(cells, cell));
  if (!block) throw new Problem("selection-empty");
  return filled(await readBlock(sheet, cells, block, progress));
}
