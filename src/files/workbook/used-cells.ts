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

const OPEN = 60;
const CLOSE = 62;
const SLASH = 47;
const COLON = 58;
const SPACE = 32;
const QUOTE = 34;
const APOSTROPHE = 39;
const EQUALS = 61;
const LETTER_A = 65;
const LETTER_Z = 90;
const DIGIT_0 = 48;
const DIGIT_9 = 57;
const [ROW, CELL, VALUE, FORMULA, INLINE] = ["row", "c", "v", "f", "is"];

/** Goes once over the bytes of a sheet part, at some hundred megabytes a second. */
export function usedCells(part: Uint8Array): UsedCells {
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
  for (let at = part.indexOf(OPEN); at >= 0; at = part.indexOf(OPEN, at + 1)) {
    const name = tagName(part, at + 1);
    if (name === ROW) {
      row = (digitsOf(attribute(part, at, "r")) ?? row + 2) - 1;
      column = -1;
    } else if (name === CELL) {
      const reference = attribute(part, at, "r");
      column = columnOf(reference) ?? column + 1;
      row = digitsOf(reference) === undefined ? row : digitsOf(reference)! - 1;
      lastFormatted = Math.max(lastFormatted, column);
      counted = false;
    } else if (!counted && (name === VALUE || name === FORMULA || name === INLINE)) {
      counted = true;
      filled++;
      lastRow = Math.max(lastRow, row);
      lastColumn = Math.max(lastColumn, column);
      end = -1;
    } else if (name === "/row" && end < 0 && lastRow >= 0) end = part.indexOf(CLOSE, at) + 1;
    if (name === FORMULA) {
      const reference = attribute(part, at, "ref");
      if (reference) spread.push(reference);
    }
    if (name === "/sheetData") {
      rowsEnd = at;
      break;
    }
  }
  const blankRows = end >= 0 && rowsEnd > end ? ([end, rowsEnd] as const) : ([0, 0] as const);
  return { filled, lastRow, lastColumn, lastFormatted, blankRows, spread };
}

/** Up to nine characters of a name, without its prefix; longer ones are none of ours. */
function tagName(part: Uint8Array, from: number): string {
  let name = "";
  for (let at = from; at < from + 24; at++) {
    const byte = part[at];
    if (byte === undefined || byte === SPACE || byte === CLOSE || byte < SPACE) break;
    if (byte === SLASH && at > from) break;
    if (byte === COLON) name = name.startsWith("/") ? "/" : "";
    else name += String.fromCharCode(byte);
    if (name.length > 10) return "";
  }
  return name;
}

/** An attribute of the tag that opens at a position. */
function attribute(part: Uint8Array, open: number, wanted: string): string | undefined {
  for (let at = open + 1; part[at] !== undefined && part[at] !== CLOSE; at++) {
    const quote = part[at]!;
    if (quote !== QUOTE && quote !== APOSTROPHE) continue;
    const end = part.indexOf(quote, at + 1);
    if (end < 0) return undefined;
    if (isNamed(part, at - 1, wanted))
      return String.fromCharCode(...part.subarray(at + 1, Math.min(end, at + 41)));
    at = end;
  }
  return undefined;
}

/** Whether the name that ends at the equals sign is the wanted one and no longer. */
function isNamed(part: Uint8Array, equals: number, wanted: string): boolean {
  if (part[equals] !== EQUALS) return false;
  for (let i = 0; i < wanted.length; i++)
    if (part[equals - wanted.length + i] !== wanted.charCodeAt(i)) return false;
  return part[equals - wanted.length - 1]! <= SPACE;
}

function columnOf(reference: string | undefined): number | undefined {
  if (!reference) return undefined;
  let column = 0;
  for (let i = 0; i < reference.length; i++) {
    const code = reference.charCodeAt(i);
    if (code < LETTER_A || code > LETTER_Z) break;
    column = column * 26 + code - LETTER_A + 1;
  }
  return column === 0 ? undefined : column - 1;
}

function digitsOf(reference: string | undefined): number | undefined {
  if (!reference) return undefined;
  let row = 0;
  for (let i = 0; i < reference.length; i++) {
    const code = reference.charCodeAt(i);
    if (code >= DIGIT_0 && code <= DIGIT_9) row = row * 10 + code - DIGIT_0;
  }
  return row === 0 ? undefined : row;
}
