import type { FUniver } from "@univerjs/core/facade";
import type { CellValue } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { holdsWhatWasRead } from "../held-cells";
import type { CellBlock, ReadArea } from "../sheet-host";
import { cellHolding } from "./cell-content";
import { valuesOf } from "./reading";
import { sheetWithId, type Sheet } from "./workbook";

/** Writes blocks of cells into a sheet. @throws Problem `changed-meanwhile`. */
export function writeCellsOf(api: FUniver, read: ReadArea, blocks: readonly CellBlock[]): void {
  const sheet = sheetWithId(api, read.area.sheetId);
  for (const block of blocks) {
    const { row, column, values } = block;
    const area = { row, column, rows: values.length, columns: values[0]!.length };
    if (!holdsWhatWasRead(valuesOf(sheet, area), read, block))
      throw new Problem("changed-meanwhile");
  }
  for (const block of blocks) write(sheet, block);
}

/** In rectangles without a cell that is to stay as it is: lines that leave out the same ones go together. */
function write(sheet: Sheet, { row, column, values }: CellBlock): void {
  makeRoom(sheet, row + values.length, column + values[0]!.length);
  const leftOut = values.map((line) => line.map((value) => value === null).join());
  for (let first = 0, next = 0; first < values.length; first = next) {
    while (next < values.length && leftOut[next] === leftOut[first]) next++;
    const lines = values.slice(first, next);
    for (const [from, to] of runsOf(lines[0]!)) {
      const cells = lines.map((line) => line.slice(from, to).map((value) => cellHolding(value)));
      sheet.getRange(row + first, column + from, lines.length, to - from).setValues(cells);
    }
  }
}

/** The runs of cells in a line that are written, each with where it ends. */
function* runsOf(line: readonly CellValue[]): Generator<[from: number, to: number]> {
  for (let from = 0, to = 0; from < line.length; from = to) {
    while (line[from] === null) from++;
    to = from;
    while (to < line.length && line[to] !== null) to++;
    if (to > from) yield [from, to];
  }
}

function makeRoom(sheet: Sheet, rows: number, columns: number): void {
  const [hasRows, hasColumns] = [sheet.getMaxRows(), sheet.getMaxColumns()];
  if (rows > hasRows) sheet.insertRowsAfter(hasRows - 1, rows - hasRows);
  if (columns > hasColumns) sheet.insertColumnsAfter(hasColumns - 1, columns - hasColumns);
}
