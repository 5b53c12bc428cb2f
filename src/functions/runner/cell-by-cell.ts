import type { Issue } from "../../measure/issue";
import type { Argument, ReadValues } from "./argument";
import { orThrow, shownInCell, withoutLoneError, type CellResult } from "./cell-error";
import { CellTable, commonShape } from "./cell-table";
import { placeByPlace } from "./place-by-place";

/**
 * Makes a worksheet function out of a calculation on single values, cell by cell.
 *
 * The worksheet function takes scalars or ranges and gives a result of their common shape. Each cell
 * stands alone: a cell whose measured arguments are all blank gives a blank, one that cannot be
 * computed gives an error with a sentence, and the others are computed all the same.
 *
 * @param args How each argument is read, in order.
 * @param compute The calculation; an issue where there is no result.
 */
export function cellByCell<const A extends readonly Argument<any>[]>(
  args: A,
  compute: (...values: ReadValues<A>) => CellResult | Issue,
): (...given: unknown[]) => any[][] {
  const names = args.map(({ name }) => name);
  const settle = (result: CellResult | Issue | undefined) => shownInCell(result ?? "");
  return (...given) => {
    const tables = args.map((_, i) => new CellTable(given[i]));
    const shape = orThrow(commonShape(tables, names));
    return withoutLoneError(
      placeByPlace(args, tables, shape, compute as (...values: any[]) => CellResult, settle),
    );
  };
}
