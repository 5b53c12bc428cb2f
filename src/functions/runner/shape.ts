import { Problem } from "../../measure/problem";

/** A column holds 1,048,576 rows, or a few less below its headers; nobody means that many tests. */
const NEARLY_A_WHOLE_COLUMN = 1_000_000;

/** Refuses a whole column. @throws Problem `whole-column`, with the argument's name. */
export function refuseWholeColumn(table: readonly unknown[], where: string): void {
  if (table.length >= NEARLY_A_WHOLE_COLUMN) throw new Problem("whole-column", { where });
}

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

/**
 * The shape of the result: a single value, a single row and a single column are repeated to fit the
 * largest range; anything else must have its size.
 *
 * @throws Problem `whole-column`, `sizes-differ`, with the argument's name.
 */
export function commonShape(
  tables: readonly (readonly unknown[][])[],
  names: readonly string[],
): Shape {
  const shapes = tables.map((table) => ({ rows: table.length, columns: table[0]?.length ?? 0 }));
  const rows = Math.max(...shapes.map((shape) => shape.rows));
  const columns = Math.max(...shapes.map((shape) => shape.columns));
  shapes.forEach((shape, i) => {
    const where = names[i] ?? "";
    refuseWholeColumn(tables[i]!, where);
    const fits = (size: number, whole: number) => size === 1 || size === whole;
    if (!fits(shape.rows, rows) || !fits(shape.columns, columns)) {
      throw new Problem("sizes-differ", {
        where,
        ...shape,
        otherRows: rows,
        otherColumns: columns,
      });
    }
  });
  return { rows, columns };
}

/** The cell of a table that stands for a cell of the result. */
export function cellAt<T>(table: readonly (readonly T[])[], row: number, column: number): T {
  const cells = table.length === 1 ? table[0]! : table[row]!;
  return cells.length === 1 ? cells[0]! : cells[column]!;
}
