import type { CellArea, ReadArea } from "../../hosts/sheet-host";
import { areaAddress } from "../../hosts/cell-address";
import { isBlank } from "../../measure/cell-value";

/** So many rows may have been added below or inserted between two looks at a table. */
const ROOM = 200;
/** Rows of the largest sheet. */
const LAST_ROW = 1_048_576;

/** The area to read to see a table again, with room for rows that were added since. */
export function areaWithRoom(area: CellArea): CellArea {
  return { ...area, rows: Math.min(area.rows + ROOM, LAST_ROW - area.row) };
}

/**
 * Cuts what was read with room to the table as it is now: it goes on below its former end as long as
 * there are filled rows, and blank rows at its end are left out.
 *
 * @param read What stands in the area with room.
 * @param formerRows Rows that the table had before.
 */
export function tableNow(read: ReadArea, formerRows: number): ReadArea {
  const blankAt = (row: number) => read.values[row]!.every(isBlank);
  let rows = Math.min(formerRows, read.values.length);
  while (rows < read.values.length && !blankAt(rows)) rows++;
  while (rows > 1 && blankAt(rows - 1)) rows--;
  const area = { ...read.area, rows };
  return { area, address: areaAddress(area), values: read.values.slice(0, rows) };
}
