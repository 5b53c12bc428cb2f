/*
 * Excel on the web refuses answers and requests of more than 5 MB, and any Excel gives no values for
 * more than 5 million cells. We stay well under both.
 */

/** Bytes that one request or answer is planned to have; unevenly filled rows still keep it under 3.5 MB. */
const PLANNED_BYTES = 2_500_000;
/** Cells of the first piece, while nothing is known of their length: 60 bytes each are allowed for. */
const FIRST_CELLS = 40_000;
/** Cells of any piece. */
const MOST_CELLS = 1_000_000;

const NOT_ASCII = /[^\x20-\x7e]/;

/** Rows of the first piece of a table. */
export function firstRows(columns: number): number {
  return Math.max(1, Math.floor(FIRST_CELLS / columns));
}

/** Rows of the next piece, from the length of the cells seen so far. */
export function nextRows(bytesSoFar: number, cellsSoFar: number, columns: number): number {
  const cells = Math.min(MOST_CELLS, (PLANNED_BYTES * cellsSoFar) / Math.max(1, bytesSoFar));
  return Math.max(1, Math.floor(cells / columns));
}

/** About how many bytes a row takes on its way to or from Excel. */
export function bytesOfRow(row: readonly unknown[]): number {
  let bytes = 2;
  for (const value of row) bytes += bytesOf(value) + 1;
  return bytes;
}

function bytesOf(value: unknown): number {
  if (typeof value !== "string") return String(value).length;
  return value.length * (NOT_ASCII.test(value) ? 3 : 1) + 2;
}

/** Cuts a table into pieces of rows that each fit into one request. */
export function pieces<Row extends readonly unknown[]>(table: readonly Row[]): Row[][] {
  const cut: Row[][] = [];
  let bytes = Infinity;
  for (const row of table) {
    const more = bytesOfRow(row);
    if (bytes + more > PLANNED_BYTES) {
      cut.push([]);
      bytes = 0;
    }
    cut[cut.length - 1]?.push(row);
    bytes += more;
  }
  return cut;
}
