import { EVERY_SIDE } from "../../hosts/area-around";
import type { ReadArea, SheetHost } from "../../hosts/sheet-host";
import { isBlank } from "../../measure/cell-value";
import { isIssue } from "../../measure/issue";
import { columnsApart } from "../../reading/columns-apart";
import { findTestsIn } from "../../reading/read-sheet";
import type { KeptColumn } from "../../reading/recognition";

/** So many rows are read to see what columns are headed. */
const TOP_ROWS = 200;

/**
 * A table with those of its own columns that a blank one sets apart from it. Others, results of formulas
 * among them, are left where they are, and said not to be read.
 *
 * @param kept What the user has said of columns.
 */
export async function withColumnsApart(
  host: SheetHost,
  read: ReadArea,
  progress: (rows: number) => void,
  kept: readonly KeptColumn[],
): Promise<ReadArea> {
  const { area, beside = [] } = read;
  if (beside.length === 0) return read;
  const all = spanOf([area, ...beside]);
  const top = { ...area, ...all, rows: Math.min(area.rows, TOP_ROWS) };
  const headed = await host.readAgain({ ...read, area: top, cut: EVERY_SIDE });
  const apart = ownColumns(headed, kept).filter(
    (column) => column < area.column || column >= area.column + area.columns,
  );
  if (apart.length === 0) return read;
  const wide = spanOf([area, ...apart.map((column) => ({ column, columns: 1 }))]);
  return host.readAgain({ ...read, area: { ...area, ...wide }, cut: ["left", "right"] }, progress);
}

type Span = Pick<ReadArea["area"], "column" | "columns">;

function spanOf(spans: readonly Span[]): Span {
  const column = Math.min(...spans.map((each) => each.column));
  const end = Math.max(...spans.map((each) => each.column + each.columns));
  return { column, columns: end - column };
}

/** The columns that are the table's own, whether a blank one stands before them or not. */
function ownColumns({ area, values }: ReadArea, kept: readonly KeptColumn[]): number[] {
  const found = findTestsIn(values, kept);
  if (isIssue(found) || !("layout" in found)) return [];
  const { table, headers } = found.layout;
  const columns = headers.map((each, index) => ({
    headers: each,
    cells: table.rows.map((row) => row[index] ?? null),
  }));
  const apart = columnsApart(columns, table.rows, kept);
  return columns.flatMap(({ headers: [...titles], cells }, index) => {
    const isBlankOne = titles.every((title) => title.trim() === "") && cells.every(isBlank);
    const isApart = apart.some(({ from, to }) => index >= from && index <= to);
    return isBlankOne || isApart ? [] : [area.column + index];
  });
}
