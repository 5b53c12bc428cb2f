import { excelHost } from "../../../src/hosts/excel/excel-host";
import { rectangleFrom } from "../../excel-client/block";
import { startExcel } from "../../excel-client/excel-client";

const ORDER = {
  sheetName: "Trend",
  title: "Air content, north pour",
  names: ["L-1", "5/8", "=L-3"],
  lines: [
    { name: "Air", values: [5.25, null, 6] },
    { name: "Mean", values: [5.5, 5.5, 5.5] },
  ],
};

test("a chart stands on a sheet of its own beside the numbers it is drawn from; a gap is blank", async () => {
  const excel = startExcel();
  expect(await excelHost().addChart?.(ORDER)).toBe("Trend");
  const [, sheet] = excel.workbook.sheets;
  expect(sheet?.grid).toEqual([
    ["", "Air", "Mean"],
    ["L-1", 5.25, 5.5],
    ["5/8", "", 5.5],
    ["=L-3", 6, 5.5],
  ]);
  expect(sheet?.charts).toEqual([
    {
      type: "LineMarkers",
      from: rectangleFrom("A1:C4"),
      title: "Air content, north pour",
      place: rectangleFrom("E2:P25"),
    },
  ]);
  expect(excel.workbook.front.name).toBe("Trend");
});

test("a chart is not drawn over an earlier one", async () => {
  const excel = startExcel();
  const host = excelHost();
  await host.addChart?.(ORDER);
  expect(await host.addChart?.(ORDER)).toBe("Trend (2)");
  expect(excel.workbook.sheets.map(({ charts }) => charts.length)).toEqual([0, 1, 1]);
});
