import { isBlank } from "../measure/cell-value";
import { Problem } from "../measure/problem";
import { readTable, type ReadingOptions } from "../reading/read-table";
import type { SheetReading } from "../reading/sheet-reading";
import type { SheetTable } from "../reading/sheet-table";
import type { CheckOptions } from "./check-options";
import { checkReading } from "./check-reading";
import type { CheckResult } from "./check-result";

/**
 * Reads a table of tests and checks it.
 *
 * @param table Headers and rows as they stand in the sheet.
 * @param options Specification limits, if they do not stand in the sheet, and the decimal mark.
 * @throws Problem `headers-and-rows-differ`, `no-header-row`, `no-readings-column`,
 *   `limits-do-not-fit`.
 */
export function checkTable(
  table: SheetTable,
  options: CheckOptions & ReadingOptions = {},
): CheckResult {
  const { headers, rows } = table;
  const odd = rows.find((row) => row.length !== headers.length);
  if (odd) {
    throw new Problem("headers-and-rows-differ", { headers: headers.length, columns: odd.length });
  }
  if (headers.every(isBlank)) throw new Problem("no-header-row");
  const sheet = readTable(table, options);
  refuseWithoutReadings(sheet);
  return checkReading(sheet, options);
}

/** A sheet without meter readings has no tests of this method to check. */
export function refuseWithoutReadings(sheet: SheetReading): void {
  if (!(["first", "second", "final"] as const).some(sheet.has)) {
    throw new Problem("no-readings-column");
  }
}
