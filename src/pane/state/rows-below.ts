import { EVERY_SIDE } from "../../hosts/area-around";
import type { ReadArea, SheetHost } from "../../hosts/sheet-host";
import { isBlank, shownValue, type CellValue } from "../../measure/cell-value";
import { isIssue } from "../../measure/issue";
import { isNumber } from "../../reading/columns-of-tests";
import { READING_FIELDS } from "../../reading/fields";
import { rowHeadedAgain } from "../../reading/headed-again";
import { isNotATestRow } from "../../reading/not-a-test-row";
import { findTestsIn } from "../../reading/read-sheet";
import { recognise } from "../../reading/recognise";
import type { KeptColumn } from "../../reading/recognition";

/** So many rows tell what the columns of a table hold. */
const ROWS_LOOKED_AT = 200;

/**
 * A table with those of its tests that blank rows set apart from it: rows further below with a number under
 * a meter reading, up to another header. What stands below the last of them is left where it is, and said
 * not to be read.
 *
 * @param kept What the user has said of columns.
 */
export async function withRowsBelow(
  host: SheetHost,
  read: ReadArea,
  progress: (rows: number) => void,
  kept: readonly KeptColumn[],
): Promise<ReadArea> {
  const { area, below } = read;
  const isTest = below && testRow(read, kept);
  if (!isTest) return read;
  const further = { ...area, ...below };
  const lower = await host.readAgain({ ...read, area: further, cut: EVERY_SIDE }, progress);
  const last = isTest(rowsUnder(read, lower));
  if (last < 0) return read;
  const rows = lower.area.row + last + 1 - area.row;
  return host.readAgain({ ...read, area: { ...area, rows }, cut: ["left", "right"] }, progress);
}

type Rows = readonly (readonly CellValue[])[];

/** Finds the last of some rows that is a test of a table; -1 for none. `undefined` where there is no table. */
function testRow(
  { values }: ReadArea,
  kept: readonly KeptColumn[],
): ((rows: Rows) => number) | undefined {
  const found = findTestsIn(values, kept);
  if (isIssue(found) || !("layout" in found)) return undefined;
  const { table, headers } = found.layout;
  const some = table.rows.slice(0, ROWS_LOOKED_AT);
  const cells = (at: number) => some.map((row) => row[at] ?? null);
  const { columns } = recognise(
    headers.map((each, at) => ({ headers: each, cells: cells(at) })),
    kept,
  );
  const readings = READING_FIELDS.flatMap((field) => columns[field]?.index ?? []);
  const names = table.headers.map(shownValue);
  const usual = Math.max(0, ...some.map(filledIn));
  return (rows) => {
    const again = rowHeadedAgain(table.headers, rows);
    const own = again < 0 ? rows : rows.slice(0, again);
    // "Low limit, 4.5" below a table has a number under a reading, and little else.
    const isTest = (row: Rows[number]) =>
      readings.some((at) => isNumber(row[at] ?? null)) &&
      filledIn(row) * 2 > usual &&
      !isNotATestRow(row, names);
    let last = own.length - 1;
    while (last >= 0 && !isTest(own[last]!)) last--;
    return last;
  };
}

function filledIn(row: Rows[number]): number {
  return row.filter((cell) => !isBlank(cell)).length;
}

/** The rows of an area further below over the columns of one above. */
function rowsUnder({ area }: ReadArea, { area: lower, values }: ReadArea): Rows {
  const left = lower.column - area.column;
  return values.map((row) =>
    Array.from({ length: area.columns }, (_, at) => row[at - left] ?? null),
  );
}
