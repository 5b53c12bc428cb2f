import type { CellValue } from "../measure/cell-value";

/** A table taken from a spreadsheet: one header for each column, and the rows below them. */
export interface SheetTable {
  readonly headers: readonly CellValue[];
  readonly rows: readonly (readonly CellValue[])[];
}
