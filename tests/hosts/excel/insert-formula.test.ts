import { excelHost } from "../../../src/hosts/excel/excel-host";
import { Problem } from "../../../src/measure/problem";
import { startExcel } from "../../excel-client/excel-client";

test("a cell into which somebody types at that moment keeps what was typed", async () => {
  const excel = startExcel();
  const sheet = excel.workbook.sheet(0);
  // The first request looks at the cell, the second writes into it.
  excel.interrupt(2, () => (sheet.grid = [["typed"]]));
  const filled = new Problem("cell-is-filled", { cell: "A1" });
  await expect(excelHost().insertFormula("=1+1")).rejects.toEqual(filled);
  expect(excel.takeBackInterruptions()).toBe(0);
  expect(sheet.grid[0]?.[0]).toBe("typed");
  expect(sheet.formulas).toEqual([]);
});
