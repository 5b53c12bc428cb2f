import { isBlank, type CellValue } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { tableOf, type Argument } from "./argument";
import { cellErrorFor } from "./cell-error";
import { cellAt, commonShape } from "./shape";

/** What a worksheet function puts into one cell. */
export type CellResult = number | string | boolean;

/** The values that a calculation gets from its arguments. */
export type ReadValues<A extends readonly Argument<unknown>[]> = {
  [I in keyof A]: A[I] extends Argument<infer T> ? T : never;
};

/**
 * Makes a worksheet function out of a calculation on single values.
 *
 * The worksheet function takes scalars or ranges and gives a result of their common shape. Each cell
 * stands alone: a cell whose measured arguments are all blank gives a blank, one that cannot be
 * computed gives an error with a sentence, and the others are computed all the same.
 *
 * @param args How each argument is read, in order.
 * @param compute The calculation. It throws a `Problem` where there is no result.
 */
export function lift<const A extends readonly Argument<any>[]>(
  args: A,
  compute: (...values: ReadValues<A>) => CellResult,
): (...given: unknown[]) => any[][] {
  return (...given) => {
    const tables = args.map((_, i) => tableOf(given[i]));
    const { rows, columns } = orThrow(() =>
      commonShape(
        tables,
        args.map(({ name }) => name),
      ),
    );
    const single = rows === 1 && columns === 1;
    const telling = tellingArguments(args, tables, single);
    const strict = args.map(({ neededInRange }, i) => !!neededInRange && isRange(tables[i]!));
    const result = Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (_, column) => {
        const cells = tables.map((table) => cellAt(table, row, column));
        if (cells.every((value, i) => !telling[i] || isBlank(value))) return "";
        const missing = args.find((_, i) => strict[i] && isBlank(cells[i]));
        if (missing) return cellErrorFor(new Problem("blank-among-others"), missing.name);
        return computeOne(args, cells, compute as (...values: unknown[]) => CellResult);
      }),
    );
    const only = result[0]![0];
    if (single && only instanceof CustomFunctions.Error) throw only;
    return result;
  };
}

/**
 * Which arguments say by a blank that a row is blank: not the settings, and no single value that is
 * repeated over a range, such as 0 cups.
 */
export function tellingArguments(
  args: readonly Argument<unknown>[],
  tables: readonly (readonly (readonly unknown[])[])[],
  single: boolean,
): readonly boolean[] {
  return args.map(({ setting }, i) => !setting && (single || isRange(tables[i]!)));
}

function isRange(table: readonly (readonly unknown[])[]): boolean {
  return table.length > 1 || table[0]!.length > 1;
}

/** Reads the arguments of one result and computes it; an error with its sentence if it cannot be. */
export function computeOne<R>(
  args: readonly Argument<unknown>[],
  cells: readonly CellValue[],
  compute: (...values: unknown[]) => R,
): R | CustomFunctions.Error {
  let where = "";
  try {
    const values = args.map((argument, i) => {
      where = argument.name;
      return readArgument(argument, cells[i]!);
    });
    where = "";
    return compute(...values);
  } catch (problem) {
    return cellErrorFor(problem, where);
  }
}

/** Reads one cell for an argument. @throws Problem `argument-missing` and those of its reading. */
export function readArgument(argument: Argument<unknown>, cell: CellValue): unknown {
  if (!isBlank(cell)) return argument.read(cell);
  if (argument.optional) return argument.otherwise;
  throw new Problem("argument-missing");
}

/** Runs a calculation whose failure is the failure of the whole function. */
export function orThrow<T>(run: () => T): T {
  try {
    return run();
  } catch (problem) {
    throw cellErrorFor(problem);
  }
}

/** Adds the argument's name to a problem that arises while arguments are read together. */
export function inArgument<T>(where: string, run: () => T): T {
  try {
    return run();
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    throw new Problem(problem.id, problem.values, problem.unavailable, problem.place || where);
  }
}
