import type { CellValue } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { tableOf } from "./argument";

/**
 * The rows of a table that stand for one series each, and the series they share.
 *
 * A column beside a column is one series; a row above a table of rows is shared by all of them; a
 * column beside a table of columns likewise.
 *
 * @throws Problem `sizes-differ`.
 */
export function pairedSeries(
  sharedGiven: unknown,
  seriesGiven: unknown,
  names: readonly [string, string],
): { pairs: (readonly [CellValue, CellValue])[][]; down: boolean } {
  const shared = tableOf(sharedGiven);
  const series = tableOf(seriesGiven);
  // Columns are laid on their side, so that each series is a row from here on.
  const down = shared[0]!.length === 1 && shared.length > 1;
  const [along, each] = down ? [turned(shared), turned(series)] : [shared, series];
  const fits =
    along[0]!.length === each[0]!.length && (along.length === 1 || along.length === each.length);
  if (!fits) {
    throw new Problem("sizes-differ", {
      where: names[1],
      rows: series.length,
      columns: series[0]!.length,
      otherRows: shared.length,
      otherColumns: shared[0]!.length,
    });
  }
  const pairs = each.map((row, i) => {
    const beside = along.length === 1 ? along[0]! : along[i]!;
    return row.map((value, j) => [beside[j]!, value] as const);
  });
  return { pairs, down };
}

function turned<T>(table: readonly (readonly T[])[]): T[][] {
  return table[0]!.map((_, column) => table.map((row) => row[column]!));
}
