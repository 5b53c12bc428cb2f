import type { CellValue } from "../measure/cell-value";

/** A table taken from a spreadsheet: one header for each column, and the rows below them. */
export interface SheetTable {
  readonly headers: readonly CellValue[];
  /** For each column its titles from the top down, its own header last, where headers stand in several rows. */
  readonly titles?: readonly (readonly string[])[];
  readonly rows: readonly (readonly CellValue[])[];
}
