import type { CellValue } from "../../measure/cell-value";
import { at, issue, type Issue } from "../../measure/issue";
import { CellTable } from "./cell-table";

/** The cells of one series, down a column or along a row. */
export interface Series {
  readonly cells: readonly CellValue[];
  /** Lays rows of cells, one for each cell of the series, beside it; along a row they lie on their side. */
  readonly beside: <T>(rows: readonly (readonly T[])[]) => T[][];
}

/**
 * Takes an argument as one series.
 *
 * @param name Name of the argument.
 * @returns The series; the issue `one-series-needed` for several rows and columns, or `whole-column`.
 */
export function seriesFrom(given: unknown, name: string): Series | Issue {
  const table = new CellTable(given);
  const { rows, columns } = table;
  const several = rows > 1 && columns > 1;
  const wrong =
    table.tooLong() ?? (several ? issue("one-series-needed", { rows, columns }) : undefined);
  if (wrong) return at(name, wrong);
  const beside = columns > 1 ? turned : copied;
  return { cells: table.values().flat(), beside };
}

function copied<T>(rows: readonly (readonly T[])[]): T[][] {
  return rows.map((row) => [...row]);
}

/** The rows of a table as its columns. */
export function turned<T>(table: readonly (readonly T[])[]): T[][] {
  return table[0]!.map((_, column) => table.map((row) => row[column]!));
}
