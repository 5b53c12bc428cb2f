import type { FieldId } from "../../../src/reading/fields";
import type { CellValue } from "../../../src/measure/cell-value";

/** What a careful reader would do with one column: take it for a field, for nothing of ours, or ask. */
export type Answer = FieldId | "none" | "ask";

/**
 * One column as it is written here: its header (top to bottom where there are several header rows;
 * a merged title stands in its first column, "" in the others), the right answer, then its cells.
 * "packed reversed" means: the field is packed, and a yes is the good answer ("bowl clean?").
 */
export type Column = readonly [
  header: string | readonly string[],
  answer: Answer | `${FieldId} reversed`,
  ...cells: CellValue[],
];

/** A table's header rows and data rows with the right answer for every column. */
export interface HeaderCase {
  readonly name: string;
  readonly headers: readonly (readonly string[])[];
  readonly rows: readonly (readonly CellValue[])[];
  readonly expect: readonly Answer[];
  /** Columns in which a yes says that all is in order. */
  readonly reversed: readonly number[];
  readonly note?: string;
}

const REVERSED = " reversed";

/** Turns columns, one a line, into the rows of a sheet. Throws where columns differ in length. */
export function headed(name: string, columns: readonly Column[], note?: string): HeaderCase {
  const heads = columns.map(([header]) => (typeof header === "string" ? [header] : header));
  const answers = columns.map(([, answer]) => answer);
  const cells = columns.map(([, , ...column]) => column);
  return {
    name,
    headers: rowsOf(name, heads),
    rows: rowsOf(name, cells),
    expect: answers.map((answer) => answer.replace(REVERSED, "") as Answer),
    reversed: answers.flatMap((answer, at) => (answer.endsWith(REVERSED) ? [at] : [])),
    ...(note === undefined ? {} : { note }),
  };
}

/** Columns turned into rows. */
function rowsOf<T>(name: string, columns: readonly (readonly T[])[]): T[][] {
  const length = columns[0]!.length;
  const odd = columns.findIndex((column) => column.length !== length);
  if (odd >= 0) throw new Error(`${name}: column ${odd + 1} has another length than the first`);
  return Array.from({ length }, (_, row) => columns.map((column) => column[row]!));
}
