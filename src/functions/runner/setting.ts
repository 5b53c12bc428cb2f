import { isIssue, issue, type Issue } from "../../measure/issue";
import { numberFromCell } from "../../measure/number-from-cell";
import { readArgument, type Argument } from "./argument";
import type { CellTable } from "./cell-table";

/** An argument that is read as a whole, not cell by cell with the others. */
export interface Setting<T> {
  readonly name: string;
  readonly read: (table: CellTable) => T | Issue;
}

/** An argument of a single value. The issue `one-value-needed`, or one of the argument. */
export function single<T>(argument: Argument<T>): Setting<T> {
  return {
    name: argument.name,
    read: (table) => {
      const cells = table.rows * table.columns;
      if (cells > 1) return issue("one-value-needed", { cells });
      return readArgument(argument, table.cell(0, 0)) as T | Issue;
    },
  };
}

/** The numbers of a few cells in a row or a column, blanks left out; an issue of `numberFromCell`. */
export function fewNumbers(name: string): Setting<readonly number[]> {
  return {
    name,
    read: (table) => {
      const wrong = table.tooLong();
      if (wrong) return wrong;
      const numbers = table
        .values()
        .flat()
        .map((cell) => numberFromCell(cell));
      return numbers.find(isIssue) ?? numbers.filter((value) => typeof value === "number");
    },
  };
}
