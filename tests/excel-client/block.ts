import { ExcelError } from "./excel-error";

/** A rectangle of cells: its first and last row and column, from 0, the last ones included. */
export interface Rectangle {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export const LAST_ROW = 1_048_575;
export const LAST_COLUMN = 16_383;
export const WHOLE_SHEET: Rectangle = { top: 0, left: 0, bottom: LAST_ROW, right: LAST_COLUMN };

/** A rectangle of one cell. */
export function cellAt(row: number, column: number): Rectangle {
  return { top: row, left: column, bottom: row, right: column };
}

export function rowsOf({ top, bottom }: Rectangle): number {
  return bottom - top + 1;
}

export function columnsOf({ left, right }: Rectangle): number {
  return right - left + 1;
}

export function cellsOf(block: Rectangle): number {
  return rowsOf(block) * columnsOf(block);
}

export function overlap(a: Rectangle, b: Rectangle): Rectangle | undefined {
  const block = {
    top: Math.max(a.top, b.top),
    left: Math.max(a.left, b.left),
    bottom: Math.min(a.bottom, b.bottom),
    right: Math.min(a.right, b.right),
  };
  return block.top <= block.bottom && block.left <= block.right ? block : undefined;
}

/** The smallest rectangle around some; `undefined` around none. */
export function around(blocks: readonly Rectangle[]): Rectangle | undefined {
  const [first, ...others] = blocks;
  return first && others.reduce(aroundTwo, first);
}

function aroundTwo(a: Rectangle, b: Rectangle): Rectangle {
  return {
    top: Math.min(a.top, b.top),
    left: Math.min(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
  };
}

/** Excel's longest address. */
const LONGEST_ADDRESS = 8_192;

/** Reads "A1", "A1:C9", "B:C", "3:7", with or without dollars and the name of a sheet. */
export function rectangleFrom(address: string): Rectangle {
  const [first = "", last = first] = address.replace(/^.*!/, "").replace(/\$/g, "").split(":");
  const start = cornerFrom(first);
  const end = cornerFrom(last);
  const block = {
    top: start.row ?? 0,
    left: start.column ?? 0,
    bottom: end.row ?? LAST_ROW,
    right: end.column ?? LAST_COLUMN,
  };
  if (block.bottom > LAST_ROW || block.right > LAST_COLUMN) throw new ExcelError("InvalidArgument");
  return block;
}

/** Reads several rectangles with commas between them. */
export function rectanglesFrom(address: string): Rectangle[] {
  if (address.length > LONGEST_ADDRESS) throw new ExcelError("InvalidArgument");
  return address.split(",").map(rectangleFrom);
}

function cornerFrom(text: string): { row?: number; column?: number } {
  const match = /^([A-Za-z]{0,3})(\d{0,7})$/.exec(text);
  if (!match || text === "") throw new ExcelError("InvalidArgument");
  const [, letters = "", digits = ""] = match;
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return {
    ...(digits ? { row: Number(digits) - 1 } : {}),
    ...(letters ? { column: column - 1 } : {}),
  };
}

/** A rectangle as Excel writes it. */
export function addressOf(block: Rectangle): string {
  const { top, left, bottom, right } = block;
  const first = `${lettersOf(left)}${top + 1}`;
  return cellsOf(block) === 1 ? first : `${first}:${lettersOf(right)}${bottom + 1}`;
}

export function lettersOf(column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}
