import type { Block } from "./cell-address";
import type { CellArea } from "./cell-area";

/** A side of an area. */
export type Side = "top" | "left" | "bottom" | "right";

/** All sides: of an area that is cut off at each, neither more nor less is ever read. */
export const EVERY_SIDE: readonly Side[] = ["top", "left", "bottom", "right"];

/** The smallest block around two. */
export function blockAround(one: Block, other: Block): Block {
  const row = Math.min(one.row, other.row);
  const column = Math.min(one.column, other.column);
  return {
    ...{ row, column },
    rows: Math.max(one.row + one.rows, other.row + other.rows) - row,
    columns: Math.max(one.column + one.columns, other.column + other.columns) - column,
  };
}

/**
 * The sides at which an area cuts through filled cells.
 *
 * @param filled The blocks of filled cells around its corners.
 */
export function sidesCut(area: Block, filled: readonly Block[]): Side[] {
  const whole = filled.reduce<Block>(blockAround, area);
  const cut: Side[] = [];
  if (whole.row < area.row) cut.push("top");
  if (whole.column < area.column) cut.push("left");
  if (whole.row + whole.rows > area.row + area.rows) cut.push("bottom");
  if (whole.column + whole.columns > area.column + area.columns) cut.push("right");
  return cut;
}

/** An area grown to hold filled blocks, but not at sides where it was cut off on purpose. */
export function grown(area: CellArea, filled: readonly Block[], cut: readonly Side[]): CellArea {
  const whole = filled.reduce<Block>(blockAround, area);
  const top = cut.includes("top") ? area.row : whole.row;
  const left = cut.includes("left") ? area.column : whole.column;
  const bottom = cut.includes("bottom") ? area.row + area.rows : whole.row + whole.rows;
  const right = cut.includes("right") ? area.column + area.columns : whole.column + whole.columns;
  return { ...area, row: top, column: left, rows: bottom - top, columns: right - left };
}
