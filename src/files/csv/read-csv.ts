import { Problem } from "../../measure/problem";
import { csvCell } from "./csv-cell";
import { CsvRows } from "./csv-rows";
import { writingOf } from "./csv-writing";
import { encodingOf } from "./text-of-bytes";

/** Characters: more than any spreadsheet takes into the cells of a row of tests. */
export const LONGEST_ROW = 1_000_000;
const PIECE = 1 << 20;
const BEGINNING = 1 << 16;
const NUL = /\0/g;

/** A CSV file as read. */
export interface CsvTable {
  readonly rows: readonly (readonly (string | number)[])[];
  /** NUL characters that were left out. */
  readonly nulCharacters: number;
  /** The line of a quote that is never closed, so that all below it became one cell. */
  readonly openQuote?: number;
}

/**
 * Reads a CSV file.
 *
 * @param bytes The whole file, in UTF-8, UTF-16 or the Western code page of Windows.
 * @param mostRows So many rows are taken.
 * @throws Problem `file-line-too-long`, `file-too-large`, before anything large is built.
 */
export function readCsv(bytes: Uint8Array, mostRows: number): CsvTable {
  const encoding = encodingOf(bytes);
  const decoder = new TextDecoder(encoding);
  const beginning = new TextDecoder(encoding).decode(bytes.subarray(0, BEGINNING));
  const writing = writingOf(beginning.replace(NUL, ""));
  const taking = new CsvRows(writing.delimiter, LONGEST_ROW, (line, length) => {
    throw new Problem("file-line-too-long", { line, length });
  });
  const rows: (string | number)[][] = [];
  let nulCharacters = 0;
  const take = (taken: Iterable<string[]>) => {
    for (const row of taken) {
      if (rows.length >= mostRows) throw new Problem("file-too-large", { most: mostRows });
      rows.push(row.map((cell) => csvCell(cell, writing)));
    }
  };
  for (let from = 0; from < bytes.length; from += PIECE) {
    const piece = decoder.decode(bytes.subarray(from, from + PIECE), { stream: true });
    const text = piece.includes("\0") ? piece.replace(NUL, "") : piece;
    nulCharacters += piece.length - text.length;
    take(taking.take(text));
  }
  const openQuote = taking.openQuote();
  take(taking.end());
  return { rows, nulCharacters, ...(openQuote !== undefined && { openQuote }) };
}
