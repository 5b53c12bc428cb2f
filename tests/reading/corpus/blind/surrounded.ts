import type { CellValue } from "../../../../src/measure/cell-value";
import type { HeaderCase } from "../header-case";
import type { TailCase } from "../tails";

/** A table with what stands above and below it on its sheet. */
export interface SurroundedCase {
  readonly table: HeaderCase;
  readonly above: readonly (readonly CellValue[])[];
  readonly below: readonly (readonly CellValue[])[];
}

/** The whole sheet as it stands, every row as long as the longest, and which of its rows are tests. */
export function wholeSheet({ table, above, below }: SurroundedCase): TailCase {
  const rows = [...above, ...table.headers, ...table.rows, ...below];
  const width = Math.max(...rows.map((row) => row.length));
  const before = above.length + table.headers.length;
  return {
    name: table.name,
    table: rows.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? null)),
    testRows: table.rows.map((_, at) => before + at),
    heldOut: true,
  };
}
