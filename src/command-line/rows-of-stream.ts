import { csvCell } from "../files/csv/csv-cell";
import { CsvRows } from "../files/csv/csv-rows";
import { writingOf } from "../files/csv/csv-writing";
import { LONGEST_ROW } from "../files/csv/read-csv";
import { encodingOf } from "../files/csv/text-of-bytes";
import { Problem } from "../measure/problem";
import { JsonRows } from "./json-rows";
import type { StreamedRow } from "./streamed-row";

/** So much is waited for before it is decided how the stream is written. */
const BEGINNING = 1 << 16;
const JSON_BEGINS = /^\s*[{[]/;
const NUL = /\0/g;

/**
 * The rows of CSV or JSON lines as they come in; no more than a piece of the stream is held.
 *
 * @throws Problem `file-line-too-long`.
 */
export async function* rowsOfStream(
  name: string,
  pieces: AsyncIterable<Uint8Array>,
): AsyncGenerator<StreamedRow> {
  let reader: RowReader | undefined;
  let decoder: InstanceType<typeof TextDecoder> | undefined;
  let nulCharacters = 0;
  const textOf = (piece: Uint8Array | undefined): string => {
    const text = piece ? decoder!.decode(piece, { stream: true }) : decoder!.decode();
    const without = text.includes("\0") ? text.replace(NUL, "") : text;
    nulCharacters += text.length - without.length;
    return without;
  };
  for await (const piece of withBeginning(pieces)) {
    decoder ??= new TextDecoder(encodingOf(piece, false));
    const text = textOf(piece);
    reader ??= readerFor(name, text);
    yield* reader.take(text);
  }
  if (!reader) return;
  yield* reader.take(textOf(undefined));
  yield* reader.end();
  if (nulCharacters > 0)
    yield { line: 1, problem: new Problem("nul-bytes-left-out", { name, count: nulCharacters }) };
}

/** Takes text and gives rows. */
interface RowReader {
  take(text: string): Iterable<StreamedRow>;
  end(): Iterable<StreamedRow>;
}

function readerFor(name: string, beginning: string): RowReader {
  const tooLong = (line: number, length: number): never => {
    throw new Problem("file-line-too-long", { name, line, length });
  };
  if (JSON_BEGINS.test(beginning)) return new JsonRows(LONGEST_ROW, tooLong);
  const writing = writingOf(beginning);
  const rows = new CsvRows(writing.delimiter, LONGEST_ROW, tooLong);
  let line = 0;
  function* numbered(taken: Iterable<string[]>): Generator<StreamedRow> {
    for (const cells of taken)
      yield { line: ++line, cells: cells.map((cell) => csvCell(cell, writing)) };
  }
  return { take: (text) => numbered(rows.take(text)), end: () => numbered(rows.end()) };
}

/** The pieces of a stream with a first one that is long enough to tell how it is written. */
async function* withBeginning(pieces: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let beginning: Uint8Array | undefined = new Uint8Array(0);
  for await (const piece of pieces) {
    if (!beginning) {
      yield piece;
      continue;
    }
    const longer: Uint8Array = new Uint8Array(beginning.length + piece.length);
    longer.set(beginning);
    longer.set(piece, beginning.length);
    beginning = longer;
    if (beginning.length < BEGINNING) continue;
    yield beginning;
    beginning = undefined;
  }
  if (beginning && beginning.length > 0) yield beginning;
}
