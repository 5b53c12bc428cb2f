import { isCellError, type CellValue } from "../../measure/cell-value";

/** A row of full width, in which every text stays a text: "=1+1" is no formula, "5/8" no date. */
export function writable(
  cells: readonly CellValue[],
  columns: number,
): (string | number | boolean)[] {
  return Array.from({ length: columns }, (_, i) => {
    const value = cells[i] ?? "";
    const shown = isCellError(value) ? value.error : value;
    return typeof shown === "string" && shown !== "" ? `'${shown}` : shown;
  });
}
