import { isCellError, type CellValue } from "../measure/cell-value";

type Rows = readonly (readonly CellValue[])[];

/** Whether two cells hold the same, letter for letter. Hosts hand an empty cell over as null or "". */
export function sameValue(one: CellValue, other: CellValue): boolean {
  if (isCellError(one) && isCellError(other)) return one.error === other.error;
  return Object.is(one === "" ? null : one, other === "" ? null : other);
}

/** Whether two rows hold the same, cell by cell. */
export function sameRow(one: readonly CellValue[], other: readonly CellValue[]): boolean {
  return one.length === other.length && one.every((value, i) => sameValue(value, other[i]!));
}

/** Whether two blocks of cells hold the same. */
export function sameRows(one: Rows, other: Rows): boolean {
  return one.length === other.length && one.every((row, i) => sameRow(row, other[i]!));
}
