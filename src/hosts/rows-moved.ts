import type { CellArea } from "./cell-area";

/** Rows that were put in above a position, or, where the count is below 0, taken out from it on. */
export interface RowsMoved {
  readonly at: number;
  readonly count: number;
}

/**
 * Where an area lies after rows were put in or taken out: it moves with rows above it and grows or
 * shrinks with rows inside it. An area all of whose rows are gone keeps one.
 */
export function areaAfter<Area extends CellArea>(area: Area, { at, count }: RowsMoved): Area {
  const top = rowAfter(area.row, at, count);
  const bottom = rowAfter(area.row + area.rows, at, count);
  // Rows put in right below the last one do not belong to the area.
  const grown = count > 0 && at === area.row + area.rows ? count : 0;
  return { ...area, row: top, rows: Math.max(1, bottom - top - grown) };
}

function rowAfter(row: number, at: number, count: number): number {
  if (row < at) return row;
  return count > 0 ? row + count : Math.max(at, row + count);
}
