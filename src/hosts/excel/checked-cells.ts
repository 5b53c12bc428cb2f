import { cellValueFrom } from "../../measure/cell-value";
import type { MarkedCell } from "../marked-cells";
import { sameRows } from "../same-values";
import type { ReadArea } from "../sheet-host";

/** Cells that are looked at once more along with the marking: about 2.5 MB of them. */
const MOST_CELLS = 40_000;

/** Some rows of the checked area, one below the other; positions in the area. */
interface Rows {
  readonly from: number;
  readonly count: number;
}

/**
 * Asks, along with the marking itself, whether checked cells still hold what was checked: all of them, and
 * where those are too many for one answer, the first row and the rows to be marked, as many as fit.
 *
 * @returns Tells it after the next sync.
 */
export function askWhetherUnchanged(
  context: Excel.RequestContext,
  checked: ReadArea,
  cells: readonly MarkedCell[],
): () => boolean {
  const { sheetId, row, column, columns } = checked.area;
  const sheet = context.workbook.worksheets.getItem(sheetId);
  const asked = rowsToAsk(checked, cells).map(({ from, count }) => {
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

function rowsToAsk({ area }: ReadArea, cells: readonly MarkedCell[]): Rows[] {
  const most = Math.max(1, Math.floor(MOST_CELLS / area.columns));
  if (area.rows <= most) return [{ from: 0, count: area.rows }];
  const marked = new Set([0, ...cells.map(({ row }) => row - area.row)]);
  const rows = [...marked].filter((at) => at >= 0 && at < area.rows).sort((a, b) => a - b);
  const runs: { from: number; count: number }[] = [];
  for (const at of rows.slice(0, most)) {
    const last = runs[runs.length - 1];
    if (last && last.from + last.count === at) last.count += 1;
    else runs.push({ from: at, count: 1 });
  }
  return runs;
}
