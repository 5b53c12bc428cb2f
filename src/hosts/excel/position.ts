import type { Block } from "../cell-address";

/** Asks for the position of a range; known after the next sync. */
export function askPosition(range: Excel.Range): void {
  range.load("rowIndex,columnIndex,rowCount,columnCount");
}

/** The position of a range that was asked for. */
export function positionOf(range: Excel.Range): Block {
  return {
    row: range.rowIndex,
    column: range.columnIndex,
    rows: range.rowCount,
    columns: range.columnCount,
  };
}
