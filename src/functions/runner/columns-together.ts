import type { CellValue } from "../../measure/cell-value";
import { at, isIssue, issue, type Issue } from "../../measure/issue";
import { say } from "../../messages/catalogue";
import { CellTable, commonShape } from "./cell-table";
import { turned } from "./series";

/** A place of columns that are read together: the cells of the arguments beside each other. */
export interface Place {
  readonly cells: readonly CellValue[];
  /** Name of an argument and the number of its cell, for a sentence. */
  readonly where: (argument: number) => string;
}

/**
 * Columns of one table, place by place. A single value stands for all places; an argument that is left
 * out is blank everywhere. Rows beside each other are taken as columns.
 *
 * @param given The arguments, by name.
 * @returns The places; the issue `sizes-differ`, `one-column-needed` or `whole-column`.
 */
export function columnsTogether(given: Readonly<Record<string, unknown>>): Place[] | Issue {
  const names = Object.keys(given);
  const tables = Object.values(given).map((cells) => new CellTable(cells));
  const lying = tables.every(({ rows }) => rows === 1);
  const columns = lying ? tables.map((table) => new CellTable(turned(table.values()))) : tables;
  const wide = columns.findIndex((table) => table.columns > 1);
  if (wide >= 0) {
    return at(names[wide]!, issue("one-column-needed", { columns: columns[wide]!.columns }));
  }
  const shape = commonShape(columns, names);
  if (isIssue(shape)) return shape;
  return Array.from({ length: shape.rows }, (_, row) => ({
    cells: columns.map((table) => table.cell(row, 0)),
    where: (argument) => say("place-in-series", { name: names[argument]!, cell: row + 1 }),
  }));
}
