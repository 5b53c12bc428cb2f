import type { Steps } from "../in-slices";

/** Rows or columns that are looked at between two steps. */
const STEP = 500;

/** A rectangle of cells, positions from 0, its last row and column included. */
export interface Rectangle {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/**
 * The block of filled cells around a cell or a block: it grows until a blank row or column, or the edge of the
 * sheet, lies on every side. In steps; nobody knows how many.
 *
 * @param isFilled Whether a cell holds something.
 * @param within The cells in use.
 * @returns The block, cut to filled cells; `undefined` where there is nothing in it or around it.
 */
export function* filledBlockInSteps(
  start: Rectangle,
  isFilled: (row: number, column: number) => boolean,
  within: Rectangle,
): Steps<Rectangle | undefined> {
  const filledIn = ({ top, left, bottom, right }: Rectangle) => {
    for (let r = Math.max(top, within.top); r <= Math.min(bottom, within.bottom); r++)
      for (let c = Math.max(left, within.left); c <= Math.min(right, within.right); c++)
        if (isFilled(r, c)) return true;
    return false;
  };
  let { top, left, bottom, right } = start;
  for (;;) {
    const [before, after] = [left - 1, right + 1];
    // Down and up first, as far as it goes: long tables grow by rows.
    while (filledIn({ top: bottom + 1, bottom: bottom + 1, left: before, right: after }))
      if (++bottom % STEP === 0) yield 0;
    while (filledIn({ top: top - 1, bottom: top - 1, left: before, right: after }))
      if (--top % STEP === 0) yield 0;
    const toLeft = filledIn({ top: top - 1, bottom: bottom + 1, left: before, right: before });
    yield 0;
    const toRight = filledIn({ top: top - 1, bottom: bottom + 1, left: after, right: after });
    yield 0;
    if (!toLeft && !toRight) return trimmed({ top, left, bottom, right }, filledIn);
    if (toLeft) left--;
    if (toRight) right++;
  }
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
