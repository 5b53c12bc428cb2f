import type { CellValue } from "../../measure/cell-value";
import { numberFromCell } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import type { Argument } from "./argument";
import { readArgument } from "./lift";

/** An argument that is read as a whole, not cell by cell with the others. */
export interface Setting<T> {
  readonly name: string;
  readonly read: (table: readonly (readonly CellValue[])[]) => T;
}

/** An argument of a single value. @throws Problem `one-value-needed` and those of the argument. */
export function single<T>(argument: Argument<T>): Setting<T> {
  return {
    name: argument.name,
    read: (table) => {
      const cells = table.flat();
      if (cells.length > 1) throw new Problem("one-value-needed", { cells: cells.length });
      return readArgument(argument, cells[0]!) as T;
    },
  };
}

/** The numbers of a few cells in a row or a column, blanks left out. */
export function fewNumbers(name: string): Setting<readonly number[]> {
  return {
    name,
    read: (table) =>
      table
        .flat()
        .map((cell) => numberFromCell(cell))
        .filter((value) => value !== undefined),
  };
}
