import type { CellValue } from "../../measure/cell-value";
import { at, type Issue } from "../../measure/issue";
import { CellTable, sizesDiffer } from "./cell-table";
import { turned } from "./series";

/** Series with the series that they share, place by place. */
export interface PairedSeries {
  readonly pairs: readonly (readonly (readonly [shared: CellValue, own: CellValue])[])[];
  /** Whether the series stand in columns. */
  readonly down: boolean;
}

/**
 * The rows of a table that stand for one series each, and the series they share.
 *
 * A column beside a column is one series; a row above a table of rows is shared by all of them; a
 * column beside a table of columns likewise.
 *
 * @returns The pairs; the issue `sizes-differ` or `whole-column`, with the name of the argument.
 */
export function pairedSeries(
  sharedGiven: unknown,
  seriesGiven: unknown,
  names: readonly [string, string],
): PairedSeries | Issue {
  const shared = new CellTable(sharedGiven);
  const series = new CellTable(seriesGiven);
  const wrong = at(names[0], shared.tooLong()) ?? at(names[1], series.tooLong());
  if (wrong) return wrong;
  // Columns are laid on their side, so that each series is a row from here on.
  const down = shared.columns === 1 && shared.rows > 1;
  const [along, each] = [shared, series].map((table) =>
    down ? turned(table.values()) : table.values(),
  ) as [CellValue[][], CellValue[][]];
  const fits =
    along[0]!.length === each[0]!.length && (along.length === 1 || along.length === each.length);
  if (!fits) return at(names[1], sizesDiffer(series, shared));
  const pairs = each.map((row, i) => {
    const beside = along.length === 1 ? along[0]! : along[i]!;
    return row.map((value, j) => [beside[j]!, value] as const);
  });
  return { pairs, down };
}
