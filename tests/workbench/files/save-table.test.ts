import { readWorkbook } from "../../../src/files/workbook/read-workbook";
import { OpenedPackage } from "../../../src/files/package/opened-package";
import { workbookOf } from "../../../src/workbench/files/save-table";

const ROWS = [["Report"], ["Sample", "Air"], ["=1+1", 6.25]];

test("a table is a workbook of its own, whose texts stay texts, ready for paper", async () => {
  const bytes = await workbookOf("loads: report", ROWS, { bold: [0, 1], widths: [14, 9] });
  const opened = new OpenedPackage(bytes);
  const part = opened.names().find((name) => name.includes("worksheets/"))!;
  const xml = await opened.text(part);
  expect(xml).toContain("<t>=1+1</t>");
  expect(xml).not.toContain("<f>");
  expect(xml).toContain('orientation="landscape"');
  expect(xml).toContain("&amp;P / &amp;N");
  expect(await readWorkbook(bytes)).toBeDefined();
});
