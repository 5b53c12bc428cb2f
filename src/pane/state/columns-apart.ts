import { EVERY_SIDE } from "../../hosts/area-around";
import type { ReadArea, SheetHost } from "../../hosts/sheet-host";
import { isIssue } from "../../measure/issue";
import { DECIDING } from "../../reading/deciding";
import { findTestsIn } from "../../reading/read-sheet";
import { recognise } from "../../reading/recognise";
import type { KeptColumn } from "../../reading/recognition";
import { sheetColumnsOf } from "./checked-area";

/** So many rows are read to see what columns are headed. */
const TOP_ROWS = 200;

/**
 * A table with the columns that a blank one sets apart from it, where they hold what decides a test, such
 * as foam. Others, results of formulas among them, are left where they are, and said not to be read.
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
  const apart = decidingColumns(headed, kept).filter(
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

/** A final reading is left out: beside a table it is what a formula makes of the others. */
function decidingColumns({ area, values }: ReadArea, kept: readonly KeptColumn[]): number[] {
  const found = findTestsIn(values, kept);
  if (isIssue(found) || !("layout" in found)) return [];
  const { all } = recognise(sheetColumnsOf(found.layout), kept);
  return all.flatMap((column) => {
    const { state, index } = column;
    const decides = state === "read" && column.field !== "final" && DECIDING.has(column.field);
    return decides ? [area.column + index] : [];
  });
}
