import { shownValue } from "../measure/cell-value";
import { orderSaidBy } from "./order-of-readings";
import type { LeftOpen, PutTogether } from "./readings-in-rows";
import type { RecognisedColumn } from "./recognition";
import { withReadingsInOneColumn } from "./readings-in-one-column";
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
  table: SheetTable,
): SheetReading {
  const own = withReadingsInOneColumn(read, reading, table);
  const headerOfOrder = shownValue(table.headers[order]);
  return {
    ...own,
    recognised: own.recognised.map((column): RecognisedColumn => {
      if (column.index !== order) return column;
      const because = { say: "readings-in-rows" as const, values: {} };
      const at = { index: order, header: headerOfOrder };
      return { ...at, state: "not ours", guard: "running number", because };
    }),
    together: { column: order, header: headerOfOrder, testOf: (row) => firstOf.get(row) ?? row },
    placeOf(row, field) {
      const further = row === null ? 0 : (below.get(row)?.[read.placeOf(row, field).column] ?? 0);
      const at = own.placeOf(row, field);
      return { ...at, row: at.row + further };
    },
  };
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
