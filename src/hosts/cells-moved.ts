import type { CellArea } from "./cell-area";

/** Whole rows or columns that were put in before a position, or, where the count is below 0, taken out. */
export interface CellsMoved {
  readonly axis: "row" | "column";
  readonly at: number;
  readonly count: number;
}

/**
 * Where an area lies after rows or columns were put in or taken out: it moves with those before it and
 * grows or shrinks with those inside it. An area that is gone altogether keeps one row and one column.
 */
export function areaAfter<Area extends CellArea>(area: Area, moved: CellsMoved): Area {
  if (moved.axis === "row") {
    const { first, length } = spanAfter({ first: area.row, length: area.rows }, moved);
    return { ...area, row: first, rows: length };
  }
  const { first, length } = spanAfter({ first: area.column, length: area.columns }, moved);
  return { ...area, column: first, columns: length };
}

interface Span {
  readonly first: number;
  readonly length: number;
}

function spanAfter({ first, length }: Span, { at, count }: CellsMoved): Span {
  const begin = positionAfter(first, at, count);
  const end = positionAfter(first + length, at, count);
  // What is put in right behind the last one does not belong to the area.
  const grown = count > 0 && at === first + length ? count : 0;
  return { first: begin, length: Math.max(1, end - begin - grown) };
}

function positionAfter(position: number, at: number, count: number): number {
  if (position < at) return position;
  return count > 0 ? position + count : Math.max(at, position + count);
}
