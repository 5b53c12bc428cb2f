/** A rectangle of cells on one sheet, positions from 0. */
export interface CellArea {
  readonly sheetId: string;
  readonly sheetName: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}
