import type { CheckResult } from "../../fieldsheet/check-result";
import { checkTable } from "../../fieldsheet/check-table";
import type { CellValue } from "../../measure/cell-value";
import { at } from "../../measure/issue";
import { Problem } from "../../measure/problem";
import { headersByColumn, inOneRow } from "../../reading/header-rows";
import { cellErrorFor, orThrow } from "./cell-error";
import { CellTable } from "./cell-table";

/** Checks the table that a worksheet function is given. A table that cannot be read fails the function. */
export function resultFor(...given: (any[][] | undefined)[]): CheckResult {
  const tables = ["headers", "rows", "low", "high"].map((name, i) => {
    const table = new CellTable(given[i]);
    orThrow(at(name, table.tooLong()));
    return table.values();
  });
  const [heads, rows, low, high] = tables as [
    CellValue[][],
    CellValue[][],
    CellValue[][],
    CellValue[][],
  ];
  const titles = heads.length > 1 ? headersByColumn(heads) : undefined;
  const headers = titles ? inOneRow(titles) : heads.flat();
  try {
    return checkTable({ headers, titles, rows }, { low: low.flat(), high: high.flat() });
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    throw cellErrorFor(problem.issue);
  }
}
