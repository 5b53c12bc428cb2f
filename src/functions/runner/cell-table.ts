import { cellValueFrom, ZERO_OR_BLANK, type CellValue } from "../../measure/cell-value";
import { at, issue, type Issue } from "../../measure/issue";
import { blankCells } from "./blank-cells";

/** A column holds 1,048,576 rows, or a few less below its headers; nobody means that many tests. */
const NEARLY_A_WHOLE_COLUMN = 1_000_000;

/** What the host handed over for an argument: a range, one value, or nothing. */
export class CellTable {
  readonly rows: number;
  readonly columns: number;
  private readonly given: readonly unknown[];
  /** What a cell holds that was handed over like this. */
  private readonly valueOf: (raw: unknown) => CellValue;

  /** @param given Anything: one blank cell where nothing is given, blanks where rows are too short. */
  constructor(given: unknown) {
    this.given = Array.isArray(given) && given.length > 0 ? (given as unknown[]) : [given];
    this.rows = this.given.length;
    let columns = 1;
    for (const row of this.given) if (Array.isArray(row)) columns = Math.max(columns, row.length);
    this.columns = columns;
    this.valueOf = blankCells().mayBeZero(this.given) ? zeroOrBlank : cellValueFrom;
  }

  /** Whether it is more than one cell. */
  get isRange(): boolean {
    return this.rows > 1 || this.columns > 1;
  }

  /** The cell that stands for a cell of the result: a single row, column or value is repeated. */
  cell(row: number, column: number): CellValue {
    const cells = this.given[this.rows === 1 ? 0 : row];
    const at = this.columns === 1 ? 0 : column;
    return this.valueOf(Array.isArray(cells) ? (cells as unknown[])[at] : at === 0 ? cells : null);
  }

  /** All cells, row by row. */
  values(): CellValue[][] {
    return this.given.map((row, at) =>
      Array.isArray(row) && row.length === this.columns
        ? this.valuesOf(row)
        : Array.from({ length: this.columns }, (_, column) => this.cell(at, column)),
    );
  }

  /** The cells of a row; the row itself where the host handed over nothing else than these. */
  private valuesOf(row: unknown[]): CellValue[] {
    const same = row.every((raw) => Object.is(this.valueOf(raw), raw));
    return same ? (row as CellValue[]) : row.map(this.valueOf);
  }

  /** What is wrong where a whole column is given: the issue `whole-column`. */
  tooLong(): Issue | undefined {
    return this.rows < NEARLY_A_WHOLE_COLUMN ? undefined : issue("whole-column");
  }
}

function zeroOrBlank(raw: unknown): CellValue {
  return raw === 0 ? ZERO_OR_BLANK : cellValueFrom(raw);
}

/** How many cells a result has. */
export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

/**
 * The shape of the result: a single value, a single row and a single column are repeated to fit the
 * largest range; anything else must have its size.
 *
 * @param names Names of the arguments, in the order of the tables.
 * @returns The shape; the issue `whole-column` or `sizes-differ`, with the argument's name.
 */
export function commonShape(tables: readonly CellTable[], names: readonly string[]): Shape | Issue {
  const rows = Math.max(...tables.map((table) => table.rows));
  const columns = Math.max(...tables.map((table) => table.columns));
  const fits = (size: number, whole: number) => size === 1 || size === whole;
  for (const [i, table] of tables.entries()) {
    const differs = !fits(table.rows, rows) || !fits(table.columns, columns);
    const wrong = table.tooLong() ?? (differs ? sizesDiffer(table, { rows, columns }) : undefined);
    if (wrong) return at(names[i]!, wrong);
  }
  return { rows, columns };
}

/** The issue `sizes-differ`. */
export function sizesDiffer({ rows, columns }: Shape, others: Shape): Issue {
  const { rows: otherRows, columns: otherColumns } = others;
  return issue("sizes-differ", { rows, columns, otherRows, otherColumns });
}
