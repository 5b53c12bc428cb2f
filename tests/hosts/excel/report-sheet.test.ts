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

test("its pictures lie on their rows, as large as they are on a screen, with what they show", async () => {
  const excel = startExcel();
  const png = Uint8Array.from({ length: 20_000 }, (_, i) => i % 256);
  const picture = { row: 2, width: 720, height: 400, title: "Air", png: async () => png };
  const look = { bold: [0], widths: [20, 8], pictures: [picture], breaks: [1] };
  await excelHost().writeResultsSheet("Fresh report", TABLE, look);
  const [drawn, ...others] = excel.workbook.sheets[1]!.pictures;
  expect(others).toEqual([]);
  expect(excel.workbook.sheets[1]!.page.breaks).toEqual([1]);
  // 96 pixels and 72 points to the inch; a row of a new sheet is 15 points high.
  expect(drawn).toMatchObject({ left: 0, top: 30, width: 540, height: 300, description: "Air" });
  expect(Buffer.from(drawn!.base64, "base64").equals(png)).toBe(true);
});
