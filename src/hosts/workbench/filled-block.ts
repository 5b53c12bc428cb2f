/** A rectangle of cells, positions from 0, its last row and column included. */
export interface Rectangle {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/**
 * The block of filled cells around a cell: it grows until a blank row or column, or the edge of the
 * sheet, lies on every side.
 *
 * @param isFilled Whether a cell holds something.
 * @param within The cells in use.
 * @returns The block, cut to filled cells; `undefined` where there is nothing around the cell.
 */
export function filledBlock(
  row: number,
  column: number,
  isFilled: (row: number, column: number) => boolean,
  within: Rectangle,
): Rectangle | undefined {
  const filledIn = ({ top, left, bottom, right }: Rectangle) => {
    for (let r = Math.max(top, within.top); r <= Math.min(bottom, within.bottom); r++)
      for (let c = Math.max(left, within.left); c <= Math.min(right, within.right); c++)
        if (isFilled(r, c)) return true;
    return false;
  };
  let block: Rectangle = { top: row, left: column, bottom: row, right: column };
  for (let grown = true; grown;) {
    const { top, left, bottom, right } = block;
    const next = {
      top: filledIn({ top: top - 1, bottom: top - 1, left: left - 1, right: right + 1 })
        ? top - 1
        : top,
      bottom: filledIn({ top: bottom + 1, bottom: bottom + 1, left: left - 1, right: right + 1 })
        ? bottom + 1
        : bottom,
      left: filledIn({ top: top - 1, bottom: bottom + 1, left: left - 1, right: left - 1 })
        ? left - 1
        : left,
      right: filledIn({ top: top - 1, bottom: bottom + 1, left: right + 1, right: right + 1 })
        ? right + 1
        : right,
    };
    grown =
      next.top !== top || next.bottom !== bottom || next.left !== left || next.right !== right;
    block = next;
  }
  return trimmed(block, filledIn);
}

/** Without blank rows and columns at the edge, such as those of a selected cell beside a table. */
function trimmed(block: Rectangle, filledIn: (part: Rectangle) => boolean): Rectangle | undefined {
  let { top, left, bottom, right } = block;
  if (!filledIn(block)) return undefined;
  while (!filledIn({ top, bottom: top, left, right })) top++;
  while (!filledIn({ top: bottom, bottom, left, right })) bottom--;
  while (!filledIn({ top, bottom, left, right: left })) left++;
  while (!filledIn({ top, bottom, left: right, right })) right--;
  return { top, left, bottom, right };
}
