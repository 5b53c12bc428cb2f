import { cellValueFrom } from "../../measure/cell-value";
import type { MarkedCell } from "../marked-cells";
import { sameRows } from "../same-values";
import type { ReadArea } from "../sheet-host";

/** Cells that are looked at once more along with the marking: about 2.5 MB of them. */
const MOST_CELLS = 40_000;

/** The headers are among these, and the head of the sheet above them. */
const FIRST_ROWS = 64;

/** Some rows of a checked table, one below the other; positions in the table. */
interface Rows {
  readonly from: number;
  readonly count: number;
}

/**
 * Asks, along with the marking itself, whether checked tables still hold what was checked: all of their
 * cells, and where those are too many for one answer, the first rows, among them the headers and what stands
 * above them, and the rows to be marked, as many as fit.
 *
 * @param toMark The cells to be marked, by sheet.
 * @returns Tells it after the next sync.
 */
export function askWhetherUnchanged(
  context: Excel.RequestContext,
  checked: readonly ReadArea[],
  toMark: ReadonlyMap<string, readonly MarkedCell[]>,
): () => boolean {
  const cells = Math.floor(MOST_CELLS / checked.length);
  const asked = checked.map((table) =>
    askOne(context, table, rowsToAsk(table, toMark.get(table.area.sheetId) ?? [], cells)),
  );
  return () => asked.every((unchanged) => unchanged());
}

function askOne(
  context: Excel.RequestContext,
  checked: ReadArea,
  rows: readonly Rows[],
): () => boolean {
  const { sheetId, row, column, columns } = checked.area;
  const sheet = context.workbook.worksheets.getItem(sheetId);
  const asked = rows.map(({ from, count }) => {
    const range = sheet.getRangeByIndexes(row + from, column, count, columns);
    range.load("values");
    return { range, then: checked.values.slice(from, from + count) };
  });
  return () =>
    asked.every(({ range, then }) => {
      const now = (range.values as unknown[][]).map((line) => line.map(cellValueFrom));
      return sameRows(now, then);
    });
}

function rowsToAsk({ area }: ReadArea, cells: readonly MarkedCell[], mostCells: number): Rows[] {
  const most = Math.max(1, Math.floor(mostCells / area.columns));
  if (area.rows <= most) return [{ from: 0, count: area.rows }];
  const marked = new Set([...Array(FIRST_ROWS).keys(), ...cells.map(({ row }) => row - area.row)]);
  const rows = [...marked].filter((at) => at >= 0 && at < area.rows).sort((a, b) => a - b);
  const runs: { from: number; count: number }[] = [];
  for (const at of rows.slice(0, most)) {
    const last = runs[runs.length - 1];
    if (last && last.from + last.count === at) last.count += 1;
    else runs.push({ from: at, count: 1 });
  }
  return runs;
}
