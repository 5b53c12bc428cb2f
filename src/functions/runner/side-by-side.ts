import { isBlank } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { tableOf, type Argument } from "./argument";
import { computeOne, orThrow, tellingArguments, type CellResult, type ReadValues } from "./lift";
import { cellAt, commonShape } from "./shape";

/**
 * Makes a worksheet function whose result takes several cells side by side, one row of them for each
 * row of the arguments. Rows stand alone as the cells of `lift` do; an error fills its row.
 *
 * @param args How each argument is read, in order; each takes a value or one column.
 * @param width How many cells a row of the result has.
 * @param compute The calculation. It throws a `Problem` where there is no result.
 */
export function liftSideBySide<const A extends readonly Argument<any>[]>(
  args: A,
  width: number,
  compute: (...values: ReadValues<A>) => readonly CellResult[],
): (...given: unknown[]) => any[][] {
  const computeCells = compute as (...values: unknown[]) => readonly CellResult[];
  return (...given) => {
    const tables = args.map((_, i) => tableOf(given[i]));
    const rows = orThrow(() => rowsOf(tables, args));
    const telling = tellingArguments(args, tables, rows === 1);
    const result = Array.from({ length: rows }, (_, row) => {
      const cells = tables.map((table) => cellAt(table, row, 0));
      const all = (cell: unknown) => Array<unknown>(width).fill(cell);
      if (cells.every((value, i) => !telling[i] || isBlank(value))) return all("");
      const computed = computeOne(args, cells, computeCells);
      return computed instanceof CustomFunctions.Error ? all(computed) : [...computed];
    });
    const only = result[0]![0];
    if (rows === 1 && only instanceof CustomFunctions.Error) throw only;
    return result;
  };
}

function rowsOf(
  tables: readonly (readonly unknown[][])[],
  args: readonly Argument<unknown>[],
): number {
  const wide = tables.findIndex((table) => table[0]!.length > 1);
  if (wide >= 0) {
    throw new Problem("one-column-needed", {
      where: args[wide]!.name,
      columns: tables[wide]![0]!.length,
    });
  }
  return commonShape(
    tables,
    args.map(({ name }) => name),
  ).rows;
}
