import type { FieldId } from "../../../src/reading/fields";
import type { CellValue } from "../../../src/measure/cell-value";

/** Where a value of a test stands (row and column of the sheet from 0) and what is in the cell. */
export interface ValuePlace {
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
}

/** One test of a form: its sheet and the cell of each of its values. */
export interface FormTest {
  readonly sheet: string;
  readonly values: Partial<Record<FieldId, ValuePlace>>;
}

/** A workbook with one form or more, and the tests that a careful reader finds in it. */
export interface FormCase {
  readonly name: string;
  readonly heldOut: boolean;
  readonly sheets: readonly { readonly name: string; readonly cells: readonly CellValue[][] }[];
  readonly tests: readonly FormTest[];
}

/** A cell that holds a value of one test or more; tests are counted on their sheet from 0. */
export interface Filled {
  readonly field: FieldId;
  readonly value: CellValue;
  readonly tests: readonly number[];
}

/** Writes a cell that holds the value of a field; without a number, of the sheet's first test. */
export function is(field: FieldId, value: CellValue, ...tests: number[]): Filled {
  return { field, value, tests: tests.length ? tests : [0] };
}

export type FormCell = CellValue | Filled;

/** Turns sheets written with their values named into plain cells and the places of the values. */
export function formCase(
  name: string,
  sheets: Readonly<Record<string, readonly (readonly FormCell[])[]>>,
  heldOut = false,
): FormCase {
  const entries = Object.entries(sheets);
  return {
    name,
    heldOut,
    sheets: entries.map(([sheet, rows]) => ({ name: sheet, cells: plainCells(rows) })),
    tests: entries.flatMap(([sheet, rows]) => testsOf(sheet, rows)),
  };
}

/** The sheet as it stands, every row as long as the longest. */
function plainCells(rows: readonly (readonly FormCell[])[]): CellValue[][] {
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) =>
    Array.from({ length: width }, (_, at) => {
      const cell = row[at];
      if (cell === undefined) return null;
      return isFilled(cell) ? cell.value : cell;
    }),
  );
}

/** The tests of a sheet in the order of their numbers. Throws where a test has one field twice. */
function testsOf(sheet: string, rows: readonly (readonly FormCell[])[]): FormTest[] {
  const tests: Partial<Record<FieldId, ValuePlace>>[] = [];
  rows.forEach((cells, row) => {
    cells.forEach((cell, column) => {
      if (!isFilled(cell)) return;
      for (const test of cell.tests) {
        const values = (tests[test] ??= {});
        if (values[cell.field]) throw new Error(`${sheet}: ${cell.field} stands twice in one test`);
        values[cell.field] = { row, column, value: cell.value };
      }
    });
  });
  return tests.map((values) => ({ sheet, values }));
}

function isFilled(cell: FormCell): cell is Filled {
  return typeof cell === "object" && cell !== null && "field" in cell;
}
