/** A block of cells, positions from 0, its last row and column included. */
export interface CellBlock {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;
const CELL = /^\$?([A-Z]{1,3})?\$?(\d{1,7})?$/i;

/** The letters of a column and the number of a row, as files write a cell: "C5". */
export function cellReference(row: number, column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26))
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  return `${letters}${row + 1}`;
}

/** A block as files write it: "C5:D9", "C5" for one cell. */
export function blockReference({ top, left, bottom, right }: CellBlock): string {
  const first = cellReference(top, left);
  const last = cellReference(bottom, right);
  return first === last ? first : `${first}:${last}`;
}

/** The block that a reference means, whole rows and columns too; undefined where it means none. */
export function blockOf(reference: string): CellBlock | undefined {
  const [first = "", last = first] = reference.split(":");
  const from = CELL.exec(first);
  const to = CELL.exec(last);
  if (!from || !to || first === "") return undefined;
  const block = {
    top: from[2] ? Number(from[2]) - 1 : 0,
    left: from[1] ? columnAt(from[1]) : 0,
    bottom: to[2] ? Number(to[2]) - 1 : MOST_ROWS - 1,
    right: to[1] ? columnAt(to[1]) : MOST_COLUMNS - 1,
  };
  const inside = block.bottom < MOST_ROWS && block.right < MOST_COLUMNS;
  return inside && block.top <= block.bottom && block.left <= block.right ? block : undefined;
}

/** Several references set apart by blanks, as the ranges of rules are written. */
export function blocksOf(references: string): CellBlock[] {
  return references.split(/[\s,]+/).flatMap((each) => blockOf(each) ?? []);
}

/** How many cells a block covers. */
export function cellsIn({ top, left, bottom, right }: CellBlock): number {
  return (bottom - top + 1) * (right - left + 1);
}

function columnAt(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0) - 1;
}
