import type { FileSheet } from "../../files/workbook/read-workbook";

/** Pixels. */
const LINE_HEIGHT = 20;
const ROW_PADDING = 4;
/** Characters. */
const USUAL_WIDTH = 10;
/** Bold letters and other fonts are wider than the characters that a file counts. */
const SPARE_CHARACTERS = 2;

/**
 * How high a row must be for its wrapped texts, by the width of their columns, since files leave that
 * to the program that shows them. Nothing for a row of one line.
 */
export function heightOfRow(sheet: FileSheet, row: number): number | undefined {
  const lines = linesOfRow(sheet, row);
  return lines > 1 ? lines * LINE_HEIGHT + ROW_PADDING : undefined;
}

function linesOfRow(sheet: FileSheet, row: number): number {
  const lines = sheet.rows[row]!.map((value, column) => {
    const wrapped = sheet.cells?.get(`${row},${column}`)?.style?.alignment?.wrapText;
    if (!wrapped || typeof value !== "string") return 1;
    const width = (sheet.columns?.[column]?.width ?? USUAL_WIDTH) - SPARE_CHARACTERS;
    return value.split("\n").reduce((sum, line) => sum + wrappedLines(line, width), 0);
  });
  return Math.max(1, ...lines);
}

function wrappedLines(text: string, width: number): number {
  let lines = 1;
  let length = 0;
  for (const word of text.split(" ")) {
    const longer = length === 0 ? word.length : length + 1 + word.length;
    if (longer > width && length > 0) lines++;
    length = longer > width ? word.length : longer;
  }
  return lines;
}
