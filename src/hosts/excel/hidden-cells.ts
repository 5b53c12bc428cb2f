import type { MarkedCell } from "../marked-cells";
import type { Block } from "../cell-address";
import { codeOf } from "./excel-errors";
import { positionOf } from "./position";

/** The smallest rectangle around cells; `undefined` around none. */
export function blockAround(cells: readonly MarkedCell[]): Block | undefined {
  if (cells.length === 0) return undefined;
  let [top, left, bottom, right] = [Infinity, Infinity, 0, 0];
  for (const { row, column } of cells) {
    top = Math.min(top, row);
    left = Math.min(left, column);
    bottom = Math.max(bottom, row);
    right = Math.max(right, column);
  }
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

/**
 * How many of the cells to be marked lie in rows or columns that are hidden or filtered out.
 *
 * @param around The rectangle around them, loaded with what in it is hidden.
 * @returns `undefined` where some rows or columns there are hidden, but Excel does not tell which.
 */
export async function hiddenCells(
  context: Excel.RequestContext,
  around: Excel.Range | undefined,
  cells: readonly MarkedCell[],
): Promise<number | undefined> {
  // Excel says null where only some are hidden.
  if (!around || (around.rowHidden === false && around.columnHidden === false)) return 0;
  if (around.rowHidden === true || around.columnHidden === true) return cells.length;
  try {
    const visible = around.getSpecialCellsOrNullObject(Excel.SpecialCellType.visible);
    visible.load("areaCount");
    await context.sync();
    if (visible.isNullObject) return cells.length;
    const { areas } = visible;
    areas.load("items/rowIndex,items/columnIndex,items/rowCount,items/columnCount");
    await context.sync();
    const blocks = areas.items.map(positionOf);
    const rows = spread(blocks.map(({ row, rows }) => [row, rows]));
    const columns = spread(blocks.map(({ column, columns }) => [column, columns]));
    return cells.filter(({ row, column }) => !rows.has(row) || !columns.has(column)).length;
  } catch (error) {
    // That it cannot be told is no reason not to mark.
    if (codeOf(error) === "") throw error;
    return undefined;
  }
}

function spread(runs: readonly (readonly [from: number, count: number])[]): Set<number> {
  const positions = new Set<number>();
  for (const [from, count] of runs) for (let i = 0; i < count; i += 1) positions.add(from + i);
  return positions;
}
