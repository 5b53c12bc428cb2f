import type { FUniver } from "@univerjs/core/facade";
import type { CellValue } from "../../measure/cell-value";
import { freeSheetName } from "../sheet-name";
import { cellHolding } from "./cell-content";
import { openWorkbook } from "./workbook";

const SPARE = 20;

/**
 * Writes a table to a new sheet and shows it.
 *
 * @returns The name of the sheet: the wished one, with a number where that is taken.
 */
export function writeResults(
  api: FUniver,
  wished: string,
  table: readonly (readonly CellValue[])[],
): string {
  const workbook = openWorkbook(api);
  const taken = workbook.getSheets().map((sheet) => sheet.getSheetName());
  const name = freeSheetName(wished, taken);
  const columns = Math.max(1, ...table.map((row) => row.length));
  const cells = table.map((row) => row.map(cellHolding));
  workbook.insertSheet(name, {
    sheet: {
      rowCount: table.length + SPARE,
      columnCount: columns + SPARE,
      cellData: Object.fromEntries(cells.map((row, r) => [r, Object.fromEntries(row.entries())])),
    },
  });
  return name;
}
