import { shownValue, type CellValue } from "../measure/cell-value";
import type { Columns } from "./column-place";
import { recognise } from "./recognise";

/**
 * Recognises what the columns of a field sheet hold from their headers alone.
 *
 * @param headers The header cells, in order.
 * @returns For each field found, its place, header and the unit written in the header.
 */
export function recogniseColumns(headers: readonly CellValue[]): Columns {
  return recognise(headers.map((header) => ({ headers: [shownValue(header)], cells: [] }))).columns;
}
