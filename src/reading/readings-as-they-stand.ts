import { shownValue } from "../measure/cell-value";
import type { Columns } from "./column-place";
import { orderSaidBy } from "./order-of-readings";
import type { LeftOpen, PutTogether } from "./readings-in-rows";
import type { RecognisedColumn } from "./recognition";
import type { SheetReading } from "./sheet-reading";
import type { SheetTable } from "./sheet-table";
import { askedOfTests } from "./unread-column";

/**
 * Tests whose readings were put together, with everything where it stands in the sheet: the second reading
 * below the first, and all of them under one header.
 */
export function asItStands(
  read: SheetReading,
  { order, reading, below, firstOf }: PutTogether,
  { headers }: SheetTable,
): SheetReading {
  const width = headers.length;
  const [headerOfOrder, headerOfReading] = [order, reading].map((at) => shownValue(headers[at]));
  const columnAt = (at: number) => (at < width ? at : reading);
  const columns = Object.fromEntries(
    Object.entries(read.columns).map(([field, place]) => {
      const isReading = place.index === reading || place.index >= width;
      const own = isReading ? headerOfReading! : place.header;
      return [field, { ...place, header: own, index: columnAt(place.index) }];
    }),
  ) as Columns;
  return {
    ...read,
    columns,
    recognised: read.recognised.filter(({ index }) => index < width).map(asHeaded),
    unread: read.unread.filter(({ index }) => index < width),
    together: { column: order, header: headerOfOrder!, testOf: (row) => firstOf.get(row) ?? row },
    placeOf(row, field) {
      const at = read.placeOf(row, field);
      const further = row === null ? 0 : (below.get(row)?.[at.column] ?? 0);
      return { row: at.row + further, column: columnAt(at.column) };
    },
  };

  function asHeaded(column: RecognisedColumn): RecognisedColumn {
    if (column.index === reading) return { ...column, header: headerOfReading! };
    if (column.index !== order) return column;
    const at = { index: order, header: headerOfOrder! };
    const because = { say: "readings-in-rows" as const, values: {} };
    return { ...at, state: "not ours", guard: "running number", because };
  }
}

/** Rows of which it cannot be told which are the readings of one test: that is asked of each of them. */
export function withRowsLeftOpen(
  read: SheetReading,
  { order, asks }: LeftOpen,
  { headers, rows }: SheetTable,
): SheetReading {
  const at = { index: order, header: shownValue(headers[order]) };
  const isReading = (row: number) => orderSaidBy(rows[row]?.[order]) !== undefined;
  const others = read.unread.filter(({ index }) => index !== order);
  return { ...read, unread: [...others, askedOfTests(asks, at, isReading)] };
}
