import type { CheckResult } from "../../fieldsheet/check-result";
import { checkBlock, checkTable } from "../../fieldsheet/check-table";
import { isBlank, type CellValue } from "../../measure/cell-value";
import { at } from "../../measure/issue";
import { headersByColumn, inOneRow } from "../../reading/header-rows";
import { readSetup } from "../../reading/setup/setup";
import { orThrow } from "./cell-error";
import { CellTable } from "./cell-table";

/**
 * Checks the table that a worksheet function is given; where its headers are left out, the rows are searched
 * for a table or forms. What cannot be read fails the function.
 */
export function resultFor(...given: (any[][] | undefined)[]): CheckResult {
  const tables = ["headers", "rows", "low", "high", "setup"].map((name, i) => {
    const table = new CellTable(given[i]);
    orThrow(at(name, table.tooLong()));
    return table.values();
  });
  const [heads, rows, low, high, written] = tables as [
    CellValue[][],
    CellValue[][],
    CellValue[][],
    CellValue[][],
    CellValue[][],
  ];
  const options = { low: low.flat(), high: high.flat(), setup: readSetup(written) };
  if (heads.flat().every(isBlank)) return orThrow(checkBlock(rows, options));
  const titles = heads.length > 1 ? headersByColumn(heads) : undefined;
  const headers = titles ? inOneRow(titles) : heads.flat();
  return orThrow(checkTable({ headers, titles, rows }, options));
}
