import type { CellValue } from "../measure/cell-value";
import type { DecimalMark } from "../measure/number-from-cell";

/** Decimals that no thousands can be: 6,25 and 0,125, while 1,250 may be either. */
const COMMA = /(?:^|[^\d.,])(?:\d+,\d{1,2}|0?,\d+|\d+,\d{4,}|\d[\d.]*\.\d{3},\d+)(?![\d.,])/;
const POINT =
  /(?:^|[^\d.,])(?:\d+\.\d{1,2}|0?\.\d+|\d+\.\d{4,}|\d{4,}\.\d+|\d[\d,]*,\d{3}\.\d+)(?![\d.,])/;
/** What may be thousands or decimals, by the sign within. */
const EITHER = { ".": /\d\.\d{3}(?!\d)/, ",": /\d,\d{3}(?!\d)/ } as const;
/** Numbers with their thousands set off, by the sign that does it. */
const GROUPED = {
  ".": /(?<![\d.,])[1-9]\d{0,2}(?:\.\d{3})+(?![\d.])/g,
  ",": /(?<![\d.,])[1-9]\d{0,2}(?:,\d{3})+(?![\d,])/g,
} as const;

/** How the numbers of a column are written. */
export interface NumbersWritten {
  readonly decimal: DecimalMark;
  /** The sign between its thousands, where the sheet tells that it can be nothing else. */
  readonly thousands?: DecimalMark;
}

/**
 * How numbers are written in a column: with a decimal comma where some of its texts can only be read so
 * and none has a decimal point, else as in the workbook. Where a text may show thousands or decimals and
 * the column does not tell, the rest of the sheet does, if it can.
 *
 * @param ofSheet The decimal mark that the texts of the whole sheet show; asked for only where it matters.
 */
export function numbersOfColumn(
  cells: readonly CellValue[],
  workbook: DecimalMark,
  ofSheet: () => DecimalMark | undefined,
): NumbersWritten {
  const shown = shownDecimal(cells);
  const either = cells.some(
    (cell) => typeof cell === "string" && (EITHER["."].test(cell) || EITHER[","].test(cell)),
  );
  const certain = shown === "both" ? undefined : (shown ?? (either ? ofSheet() : undefined));
  const decimal = workbook === "," ? "," : (certain ?? workbook);
  if (!either || certain === undefined) return { decimal };
  return { decimal, thousands: certain === "," ? "." : "," };
}

/** The decimal mark that the texts of columns show; `undefined` for none and where both stand. */
export function decimalOfSheet(columns: Iterable<readonly CellValue[]>): DecimalMark | undefined {
  let all: DecimalMark | undefined;
  for (const cells of columns) {
    const shown = shownDecimal(cells);
    if (shown === "both" || (shown && all && shown !== all)) return undefined;
    all ??= shown;
  }
  return all;
}

/** A number whose thousands are set off without the signs that do it. */
export function ungrouped(cell: string, thousands: DecimalMark): string {
  return cell.replace(GROUPED[thousands], (number) => number.replaceAll(thousands, ""));
}

function shownDecimal(cells: readonly CellValue[]): DecimalMark | "both" | undefined {
  let comma = false;
  let point = false;
  for (const cell of cells) {
    if (typeof cell !== "string") continue;
    comma ||= COMMA.test(cell);
    point ||= POINT.test(cell);
    if (comma && point) return "both";
  }
  return comma ? "," : point ? "." : undefined;
}
