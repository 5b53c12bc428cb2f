import { at, isIssue, issue, type Issue } from "../../measure/issue";
import type { Argument, ReadValues } from "./argument";
import { orThrow, shownInCell, withoutLoneError, type CellResult } from "./cell-error";
import { CellTable, commonShape, type Shape } from "./cell-table";
import { placeByPlace } from "./place-by-place";

type CellsOfRow = readonly CellResult[];

/**
 * Makes a worksheet function whose result takes several cells side by side, row by row: one row of them
 * for each row of the arguments. Rows stand alone as the cells of `cellByCell` do; an error fills its row.
 *
 * @param args How each argument is read, in order; each takes a value or one column.
 * @param width How many cells a row of the result has.
 * @param compute The calculation; an issue where there is no result.
 */
export function rowByRow<const A extends readonly Argument<any>[]>(
  args: A,
  width: number,
  compute: (...values: ReadValues<A>) => CellsOfRow | Issue,
): (...given: unknown[]) => any[][] {
  const names = args.map(({ name }) => name);
  const settle = (result: CellsOfRow | Issue | undefined) => {
    if (result !== undefined && !isIssue(result)) return result.map(shownInCell);
    return Array<unknown>(width).fill(shownInCell(result ?? ""));
  };
  return (...given) => {
    const tables = args.map((_, i) => new CellTable(given[i]));
    const shape = orThrow(columnShape(tables, names));
    const rows = placeByPlace(args, tables, shape, compute as (...v: any[]) => CellsOfRow, settle);
    return withoutLoneError(rows.map(([cells]) => cells!));
  };
}

function columnShape(tables: readonly CellTable[], names: readonly string[]): Shape | Issue {
  const wide = tables.findIndex(({ columns }) => columns > 1);
  if (wide < 0) return commonShape(tables, names);
  return at(names[wide]!, issue("one-column-needed", { columns: tables[wide]!.columns }));
}
