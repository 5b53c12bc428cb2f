import { shownValue, type CellValue } from "../measure/cell-value";
import { READING_FIELDS } from "./fields";
import { rowHeadedAgain, withTitlesAbove } from "./headed-again";
import type { SheetLayout } from "./layout";
import { recognise } from "./recognise";
import type { KeptColumn } from "./recognition";

/** So many cells tell what a column holds. */
const CELLS_LOOKED_AT = 200;

/**
 * The tables of tests that stand below one another in a block, each with its rows up to the next. A
 * further header without a meter reading ends nothing: whoever reads the table above it says so.
 *
 * @param first The uppermost of them, with all rows below its header.
 */
export function stackedTables(
  first: SheetLayout,
  kept?: readonly KeptColumn[],
): readonly SheetLayout[] {
  const above: SheetLayout[] = [];
  for (let layout = first; ;) {
    const { headerRow, table } = layout;
    const { headers, rows } = table;
    const again = rowHeadedAgain(headers, rows);
    const next = again < 0 ? undefined : headedBy(rows[again]!, rows.slice(again + 1));
    if (!next || !hasReadings(next, kept)) return [...above, layout];
    const own = rows.slice(0, withTitlesAbove(rows, again));
    above.push({ ...layout, table: { ...table, rows: own } });
    layout = { ...next, headerRow: headerRow + 1 + again };
  }
}

function headedBy(
  headers: readonly CellValue[],
  rows: readonly (readonly CellValue[])[],
): Omit<SheetLayout, "headerRow"> {
  return { table: { headers, rows }, headers: headers.map((header) => [shownValue(header)]) };
}

function hasReadings(
  { headers, table }: Omit<SheetLayout, "headerRow">,
  kept?: readonly KeptColumn[],
): boolean {
  const some = table.rows.slice(0, CELLS_LOOKED_AT);
  const { columns } = recognise(
    headers.map((each, at) => ({ headers: each, cells: some.map((row) => row[at] ?? null) })),
    kept,
  );
  return READING_FIELDS.some((field) => columns[field]);
}
