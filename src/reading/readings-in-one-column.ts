import { shownValue } from "../measure/cell-value";
import type { Columns } from "./column-place";
import type { SheetReading } from "./sheet-reading";
import type { SheetTable } from "./sheet-table";

/** Which column of the sheet a column of the table is that was read: the further ones hold further readings. */
export function columnInSheet(at: number, reading: number, { headers }: SheetTable): number {
  return at < headers.length ? at : reading;
}

/**
 * Tests whose readings were set apart, each in a column of its own, with all of them in the one column of the sheet and
 * under its header.
 *
 * @param reading Position of that column.
 * @param table The table as it stands in the sheet.
 */
export function withReadingsInOneColumn(
  read: SheetReading,
  reading: number,
  table: SheetTable,
): SheetReading {
  const width = table.headers.length;
  const header = shownValue(table.headers[reading]);
  const columns = Object.fromEntries(
    Object.entries(read.columns).map(([field, place]) => {
      const isReading = place.index === reading || place.index >= width;
      const index = columnInSheet(place.index, reading, table);
      return [field, { ...place, index, header: isReading ? header : place.header }];
    }),
  ) as Columns;
  return {
    ...read,
    columns,
    recognised: read.recognised
      .filter(({ index }) => index < width)
      .map((column) => (column.index === reading ? { ...column, header } : column)),
    unread: read.unread.filter(({ index }) => index < width),
    placeOf(row, field) {
      const at = read.placeOf(row, field);
      return { ...at, column: columnInSheet(at.column, reading, table) };
    },
  };
}
