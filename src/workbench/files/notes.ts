import type { FileSheet } from "../../files/workbook/read-workbook";

/** Pixels. */
const WIDTH = 260;
const HEIGHT = 120;

/** A note as the spreadsheet keeps it. */
interface ShownNote {
  readonly id: string;
  readonly row: number;
  readonly col: number;
  readonly note: string;
  readonly width: number;
  readonly height: number;
  readonly show: boolean;
}

/** The notes of a sheet by row and column. */
export function notes(sheet: FileSheet): Record<number, Record<number, ShownNote>> {
  const shown: Record<number, Record<number, ShownNote>> = {};
  for (const [key, { comment }] of sheet.cells ?? []) {
    if (!comment) continue;
    const [row = 0, col = 0] = key.split(",").map(Number);
    const note = comment.text.replace(/\r\n?/g, "\n");
    (shown[row] ??= {})[col] = {
      ...{ id: key, row, col, note },
      ...{ width: WIDTH, height: HEIGHT, show: false },
    };
  }
  return shown;
}
