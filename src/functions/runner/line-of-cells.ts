import type { CellValue } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { tableOf } from "./argument";
import { commonShape } from "./shape";

/** One column or one row of cells, in order, and how a result is laid beside it. */
export interface LineOfCells {
  readonly cells: readonly CellValue[];
  readonly beside: <T>(results: readonly T[]) => T[][];
}

/**
 * The cells of an argument that is one series, down a column or along a row.
 *
 * @throws Problem `results-not-a-series` for a table of several rows and columns, `whole-column`.
 */
export function lineOfCells(given: unknown, where: string): LineOfCells {
  const table = tableOf(given);
  commonShape([table], [where]);
  if (table.length === 1) return { cells: table[0]!, beside: (results) => [[...results]] };
  if (table[0]!.length > 1) throw new Problem("results-not-a-series", { where });
  return {
    cells: table.map((row) => row[0]!),
    beside: (results) => results.map((result) => [result]),
  };
}
