import type { CellValue } from "../measure/cell-value";
import { sameRows } from "./same-values";
import type { CellBlock, ReadArea } from "./sheet-host";

/** Whether the cells of a block hold what was read of their sheet, from its first cell on. */
export function holdsWhatWasRead(
  now: readonly (readonly CellValue[])[],
  { values }: ReadArea,
  { row, column }: CellBlock,
): boolean {
  const read = now.map((line, r) => line.map((_, c) => values[row + r]?.[column + c] ?? null));
  return sameRows(now, read);
}
