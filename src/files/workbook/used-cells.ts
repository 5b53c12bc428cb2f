/** What a sheet part really holds, counted without building anything. Positions from 0, −1 for none. */
export interface UsedCells {
  /** Cells with a value or formula. */
  readonly filled: number;
  /** The last row and column with such a cell. */
  readonly lastRow: number;
  readonly lastColumn: number;
  /** The last column of any cell, also of one that has only a format. */
  readonly lastFormatted: number;
  /** Rows behind the last filled one that only have formats, as a stretch of bytes; empty without. */
  readonly blankRows: readonly [from: number, to: number];
  /** Ranges over which formulas claim to spread. */
  readonly spread: readonly string[];
}

const [TAB, SPACE, QUOTE, APOSTROPHE, SLASH, DIGIT_0, DIGIT_9] = [9, 32, 34, 39, 47, 48, 57];
const [OPEN, EQUALS, CLOSE, LETTER_A, LETTER_Z] = [60, 61, 62, 65, 90];
const ROW = bytesOf("row");
const CELL = bytesOf("c");
const VALUE = bytesOf("v");
const FORMULA = bytesOf("f");
const INLINE = bytesOf("is");
const ROW_END = bytesOf("/row");
const ROWS_END = bytesOf("/sheetData");
const REFERENCE = bytesOf("r");
const SPREAD = bytesOf("ref");

/** Goes once over the bytes of a sheet part, without making a text of them. */
export function usedCells(part: Uint8Array): UsedCells {
  const prefix = prefixLength(part);
  let filled = 0;
  let lastRow = -1;
  let lastColumn = -1;
  let lastFormatted = -1;
  let end = -1;
  let row = -1;
  let column = -1;
  let counted = true;
  let rowsEnd = -1;
  const spread: string[] = [];
  for (let at = part.indexOf(OPEN); at >= 0 && at < part.length; at++) {
    if (part[at] !== OPEN) continue;
    const closing = part[at + 1] === SLASH;
    const name = at + 1 + prefix;
    if (closing) {
      if (end < 0 && lastRow >= 0 && isTag(part, at + 1, prefix, ROW_END))
        end = part.indexOf(CLOSE, at) + 1;
      else if (isTag(part, at + 1, prefix, ROWS_END)) {
        rowsEnd = at;
        break;
      }
    } else if (isName(part, name, CELL)) {
      const reference = attributeAt(part, name, REFERENCE);
      column = reference < 0 ? column + 1 : columnAt(part, reference);
      if (reference >= 0) row = rowAt(part, reference) ?? row;
      if (column > lastFormatted) lastFormatted = column;
      counted = false;
    } else if (isName(part, name, ROW)) {
      const reference = attributeAt(part, name, REFERENCE);
      row = (reference < 0 ? undefined : rowAt(part, reference)) ?? row + 1;
      column = -1;
    } else if (isName(part, name, FORMULA)) {
      const reference = attributeAt(part, name, SPREAD);
      if (reference >= 0) spread.push(textAt(part, reference));
      if (!counted) fill();
    } else if (!counted && (isName(part, name, VALUE) || isName(part, name, INLINE))) fill();
  }
  function fill(): void {
    counted = true;
    filled++;
    if (row > lastRow) lastRow = row;
    if (column > lastColumn) lastColumn = column;
    end = -1;
  }
  const blankRows = end >= 0 && rowsEnd > end ? ([end, rowsEnd] as const) : ([0, 0] as const);
  return { filled, lastRow, lastColumn, lastFormatted, blankRows, spread };
}

/** How long the prefix of every name in the part is: 0, or 2 for "x:". */
function prefixLength(part: Uint8Array): number {
  const start = new TextDecoder().decode(part.subarray(0, 4096));
  return /<([\w.-]+:)?worksheet[\s>]/.exec(start)?.[1]?.length ?? 0;
}

/** Whether a name stands here and ends here. */
function isName(part: Uint8Array, at: number, name: Uint8Array): boolean {
  for (let i = 0; i < name.length; i++) if (part[at + i] !== name[i]) return false;
  const next = part[at + name.length]!;
  return next === SPACE || next === CLOSE || next === SLASH || (next >= TAB && next < SPACE);
}

/** The same of a closing tag, whose prefix stands behind its slash. */
function isTag(part: Uint8Array, slash: number, prefix: number, tag: Uint8Array): boolean {
  return part[slash] === tag[0] && isName(part, slash + 1 + prefix, tag.subarray(1));
}

/** Where the value of an attribute begins, of the tag whose name stands here; −1 without it. */
function attributeAt(part: Uint8Array, name: number, wanted: Uint8Array): number {
  for (let at = name; at < part.length && part[at] !== CLOSE; at++) {
    const quote = part[at]!;
    if (quote !== QUOTE && quote !== APOSTROPHE) continue;
    const start = at - 1 - wanted.length;
    if (part[at - 1] === EQUALS && part[start - 1]! <= SPACE && isSame(part, start, wanted))
      return at + 1;
    for (at++; at < part.length && part[at] !== quote;) at++;
  }
  return -1;
}

function isSame(part: Uint8Array, at: number, wanted: Uint8Array): boolean {
  for (let i = 0; i < wanted.length; i++) if (part[at + i] !== wanted[i]) return false;
  return true;
}

function columnAt(part: Uint8Array, at: number): number {
  let column = 0;
  for (let i = at; part[i]! >= LETTER_A && part[i]! <= LETTER_Z; i++)
    column = column * 26 + part[i]! - LETTER_A + 1;
  return column - 1;
}

function rowAt(part: Uint8Array, at: number): number | undefined {
  let i = at;
  while (part[i]! >= LETTER_A && part[i]! <= LETTER_Z) i++;
  let row = 0;
  for (; part[i]! >= DIGIT_0 && part[i]! <= DIGIT_9; i++) row = row * 10 + part[i]! - DIGIT_0;
  return row > 0 ? row - 1 : undefined;
}

/** The text of an attribute; of an overlong one the beginning. */
function textAt(part: Uint8Array, at: number): string {
  const quote = part[at - 1]!;
  const end = part.indexOf(quote, at);
  return new TextDecoder().decode(part.subarray(at, Math.min(end < 0 ? at : end, at + 40)));
}

function bytesOf(name: string): Uint8Array {
  return new TextEncoder().encode(name);
}
