import type { ReadArea } from "../../hosts/sheet-host";
import { sameRow, sameValue } from "../../hosts/same-values";
import { isBlank, type CellValue } from "../../measure/cell-value";

type Row = readonly CellValue[];

/** So far down the header of a table is looked for. */
const DEEPEST_HEADER = 100;

/** Where a row of a block stands by now, positions in what was read by now. */
export interface RowPlace {
  readonly row: number;
  /** Where each column of the block stands by now; `undefined` for one that is gone. */
  readonly columns: readonly (number | undefined)[];
  /** Whether its cells are still what they were; else it was known by its own id alone. */
  readonly unchanged: boolean;
}

/** A row that was checked. */
export interface CheckedRow {
  readonly row: number;
  /** The row of the headers above it. */
  readonly headerRow: number;
  /** The column of the sample or load; absent where the sheet has none. */
  readonly id?: number | undefined;
}

/**
 * Finds a row of a checked block in the block as it is now, by the row's own cells: all of them under their
 * headers, or else its sample or load, where only one row has it.
 *
 * @param before What was checked.
 * @param now The same as it is now.
 * @returns `undefined` where it cannot be told which row it is.
 */
export function whereRowIs(
  before: ReadArea,
  { row, headerRow, id }: CheckedRow,
  now: ReadArea,
): RowPlace | undefined {
  const header = headerNow(before.values[headerRow]!, now.values);
  if (!header || row <= headerRow) return header && { ...header, unchanged: true };
  const { columns } = header;
  const wanted = before.values[row]!;
  const rowsWith = (holds: (cells: Row) => boolean) =>
    now.values.flatMap((cells, at) => (at > header.row && holds(cells) ? [at] : []));

  const alike = rowsWith((cells) =>
    columns.every((at, i) => at === undefined || sameValue(cells[at]!, wanted[i]!)),
  );
  // Of rows with the very same cells, the second stays the second.
  const above = before.values.slice(headerRow + 1, row).filter((cells) => sameRow(cells, wanted));
  const found = alike[Math.min(above.length, alike.length - 1)];
  if (found !== undefined) return { row: found, columns, unchanged: true };

  const at = id === undefined ? undefined : columns[id];
  if (id === undefined || at === undefined || isBlank(wanted[id])) return undefined;
  const named = rowsWith((cells) => sameValue(cells[at]!, wanted[id]!));
  const namesakes = before.values.filter((cells) => sameValue(cells[id]!, wanted[id]!));
  const alone = named.length === 1 && namesakes.length === 1;
  return alone ? { row: named[0]!, columns, unchanged: false } : undefined;
}

/** The row in which most of the headers stand by now, and where each of them stands. */
function headerNow(
  headers: Row,
  values: readonly Row[],
): { readonly row: number; readonly columns: readonly (number | undefined)[] } | undefined {
  let best: { row: number; columns: (number | undefined)[]; found: number } | undefined;
  values.slice(0, DEEPEST_HEADER).forEach((cells, row) => {
    const taken = new Set<number>();
    const columns = headers.map((header) => {
      const at = isBlank(header)
        ? -1
        : cells.findIndex((cell, i) => !taken.has(i) && sameValue(cell, header));
      if (at < 0) return undefined;
      taken.add(at);
      return at;
    });
    if (taken.size > (best?.found ?? 0)) best = { row, columns, found: taken.size };
  });
  return best;
}
