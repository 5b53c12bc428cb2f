import { excelHost } from "../../../src/hosts/excel/excel-host";
import { rectangleFrom } from "../../excel-client/block";
import { startExcel } from "../../excel-client/excel-client";

const TABLE = [["Report"], ["Sample", "Air"], ["L-1", 6.25]];

test("a sheet with a look of its own has its headings, widths and what paper needs", async () => {
  const excel = startExcel();
  await excelHost().writeResultsSheet("Fresh report", TABLE, { bold: [0, 1], widths: [20, 8] });
  const [, sheet] = excel.workbook.sheets;
  expect(sheet?.bold).toEqual(
    expect.arrayContaining([rectangleFrom("A1:B1"), rectangleFrom("A2:B2")]),
  );
  // Excel's own figures: a column of 8.43 characters is 48 points wide, one character 5.25 more.
  expect([...sheet!.widths]).toEqual([
    [0, 108.75],
    [1, 45.75],
  ]);
  // "&F" and "&A" are file and sheet in Excel's codes, "&P" and "&N" the page and their number.
  expect(sheet?.page).toEqual({
    orientation: "Landscape",
    pagesWide: 1,
    leftFooter: "&F, &A",
    rightFooter: "&P / &N",
  });
});

test("one without is as it was: the first row is the heading", async () => {
  const excel = startExcel();
  await excelHost().writeResultsSheet("Findings", TABLE);
  const [, sheet] = excel.workbook.sheets;
  expect(sheet?.bold).toEqual([rectangleFrom("A1:B1")]);
  expect(sheet?.page).toEqual({});
});
