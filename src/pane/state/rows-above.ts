import { EVERY_SIDE } from "../../hosts/area-around";
import { areaAddress } from "../../hosts/cell-address";
import type { ReadArea, SheetHost } from "../../hosts/sheet-host";
import type { CellValue } from "../../measure/cell-value";
import { isIssue } from "../../measure/issue";
import { READING_FIELDS } from "../../reading/fields";
import { findTestsIn } from "../../reading/read-sheet";
import { recognise } from "../../reading/recognise";
import type { KeptColumn } from "../../reading/recognition";
import { saidOnce } from "../../reading/said-once";
import { sheetColumnsOf } from "./checked-area";

/** So far up a sheet's head is looked for. */
const MOST_ROWS = 60;

type Rows = readonly (readonly CellValue[])[];

/**
 * A table with the head of its sheet, which a blank row sets apart from it, where that says something of
 * the tests: what is specified, their day, their method. Another table further above is none of its head.
 *
 * @param kept What the user has said of columns.
 */
export async function withRowsAbove(
  host: SheetHost,
  read: ReadArea,
  kept: readonly KeptColumn[],
): Promise<ReadArea> {
  const { area } = read;
  const rows = Math.min(area.row, MOST_ROWS);
  if (rows === 0) return read;
  const top = { ...area, row: area.row - rows, rows };
  const above = await host.readAgain({ ...read, area: top, cut: EVERY_SIDE });
  if (above.area.row >= area.row) return read;
  const head = rowsOver(read, above);
  if (holdsTests(head, kept)) return read;
  const whole = {
    ...area,
    row: above.area.row,
    rows: area.row + area.rows - above.area.row,
  };
  const values = [...head, ...read.values];
  if (!saysMore(head, values, read.values, kept)) return read;
  return { ...read, area: whole, address: areaAddress(whole), values, cut: ["left", "right"] };
}

/** The rows from the first filled one above a table to its own, over its columns. */
function rowsOver({ area }: ReadArea, above: ReadArea): Rows {
  const left = above.area.column - area.column;
  return Array.from({ length: area.row - above.area.row }, (_, row) =>
    Array.from({ length: area.columns }, (_, at) => above.values[row]?.[at - left] ?? null),
  );
}

/** Whether some rows hold tests of their own. */
function holdsTests(rows: Rows, kept: readonly KeptColumn[]): boolean {
  const found = findTestsIn(rows, kept);
  if (isIssue(found)) return false;
  if ("forms" in found) return true;
  const { columns } = recognise(sheetColumnsOf(found.layout), kept);
  return READING_FIELDS.some((field) => columns[field]);
}

/** Whether a head says something of the tests, which are the same with it as without. */
function saysMore(head: Rows, values: Rows, alone: Rows, kept: readonly KeptColumn[]): boolean {
  const [one, other] = [findTestsIn(alone, kept), findTestsIn(values, kept)];
  if (isIssue(one) || isIssue(other) || !("layout" in one && "layout" in other)) return false;
  const isSame = other.layout.headerRow === one.layout.headerRow + head.length;
  const { said, open } = saidOnce({ rows: head, from: 0 }, { kept });
  return (
    isSame && (said.length > 0 || open.length > 0 || (other.title !== undefined && !one.title))
  );
}
