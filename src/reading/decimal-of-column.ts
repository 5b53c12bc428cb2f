import type { CellValue } from "../measure/cell-value";
import type { DecimalMark } from "../measure/number-from-cell";

/** A comma that no thousands can follow: 6,25 and 0,125, while 1,250 may be either. */
const COMMA = /(?:^|[^\d.,])(?:\d+,\d{1,2}|0?,\d+|\d+,\d{4,})(?![\d.,])/;
const POINT = /\d\.\d|(?:^|\s)\.\d/;

/**
 * How decimals are written in a column: with a comma where some of its texts can only be read so and
 * none has a decimal point, else as in the workbook.
 */
export function decimalOfColumn(cells: readonly CellValue[], workbook: DecimalMark): DecimalMark {
  if (workbook === ",") return ",";
  let comma = false;
  for (const cell of cells) {
    if (typeof cell !== "string") continue;
    if (POINT.test(cell)) return workbook;
    comma ||= COMMA.test(cell);
  }
  return comma ? "," : workbook;
}
