import type { CellArea } from "./cell-area";

/** A block of cells without its sheet, positions from 0. */
export type Block = Pick<CellArea, "row" | "column" | "rows" | "columns">;

const PLAIN_SHEET_NAME = /^[A-Za-z_][A-Za-z0-9_.]*$/;
const LOOKS_LIKE_A_CELL = /^([A-Za-z]{1,3}\d+|[Rr]\d*[Cc]\d*)$/;

/** The letters over a column, from its position: 0 is A, 26 is AA. */
export function columnLetters(column: number): string {
  const before = Math.floor(column / 26) - 1;
  return (before < 0 ? "" : columnLetters(before)) + String.fromCharCode(65 + (column % 26));
}

/** The position of a column, from its letters: A is 0, AA is 26. */
export function columnPosition(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0) - 1;
}

/** A block as people write it, without its sheet: "C5" or "C5:D9". */
export function blockAddress({ row, column, rows, columns }: Block): string {
  const first = `${columnLetters(column)}${row + 1}`;
  if (rows === 1 && columns === 1) return first;
  return `${first}:${columnLetters(column + columns - 1)}${row + rows}`;
}

/** An area as people write it: "Loads!A1:N29", "'Day 1'!A1:N29". */
export function areaAddress(area: CellArea): string {
  const { sheetName } = area;
  const plain = PLAIN_SHEET_NAME.test(sheetName) && !LOOKS_LIKE_A_CELL.test(sheetName);
  return `${plain ? sheetName : `'${sheetName.replace(/'/g, "''")}'`}!${blockAddress(area)}`;
}

/** The first cell of an address such as "B3", "B3:D9", "B3,F5", "B:B" or "3:3". */
export function firstCellOf(address: string): { readonly row: number; readonly column: number } {
  const [first = ""] = address.replace(/^.*!/, "").replace(/\$/g, "").split(/[:,]/);
  const [, letters = "", digits = ""] = /^([A-Za-z]*)(\d*)$/.exec(first) ?? [];
  return {
    row: digits ? Number(digits) - 1 : 0,
    column: letters ? columnPosition(letters) : 0,
  };
}

/** The block that an address such as "A1:N29" or "C5" names, its corners in any order. */
export function blockOf(address: string): Block | undefined {
  const parts = /^([A-Z]{1,3})(\d{1,7})(?::([A-Z]{1,3})(\d{1,7}))?$/i.exec(
    address.trim().replaceAll("$", ""),
  );
  if (!parts) return undefined;
  const [, left = "", top = "", right = left, bottom = top] = parts;
  const rows = [Number(top) - 1, Number(bottom) - 1];
  const columns = [columnPosition(left), columnPosition(right)];
  const [row, column] = [Math.min(...rows), Math.min(...columns)];
  if (row < 0) return undefined;
  return {
    row,
    column,
    rows: Math.max(...rows) - row + 1,
    columns: Math.max(...columns) - column + 1,
  };
}
