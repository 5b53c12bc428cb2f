import { readWorkbook } from "../../../src/files/workbook/read-workbook";
import { OpenedPackage } from "../../../src/files/package/opened-package";
import { relationsIn, relationsPartOf } from "../../../src/files/package/relations";
import { partsOfPackage } from "../../../src/files/package/zip-directory";
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

test("pictures stand in a drawing of the sheet, each with a part of its own (ECMA-376, 20.5)", async () => {
  const [one, two] = [Uint8Array.of(1, 2, 3), Uint8Array.of(4, 5)];
  const picture = { row: 1, width: 720, height: 400, title: "Air, “A & B”" };
  const bytes = await workbookOf("report", ROWS, {
    bold: [0],
    widths: [14],
    breaks: [1, 29],
    pictures: [
      { ...picture, png: async () => one },
      { ...picture, row: 30, png: async () => two },
    ],
  });
  const opened = new OpenedPackage(bytes);
  const sheet = opened.names().find((name) => name.includes("worksheets/sheet"))!;
  const related = async (part: string) =>
    relationsIn(await opened.text(relationsPartOf(part)), part);
  const [toDrawing] = await related(sheet);
  // Where the standard wants them: behind the foot of the page. A break names the row before it, from 1.
  const [first, second] = [1, 29].map((row) => `<brk id="${row}" max="16383" man="1"/>`);
  const breaks = `<rowBreaks count="2" manualBreakCount="2">${first}${second}</rowBreaks>`;
  expect(await opened.text(sheet)).toMatch(
    new RegExp(
      `</headerFooter>${breaks}<drawing xmlns:r="[^"]+" r:id="${toDrawing!.id}"/></worksheet>$`,
    ),
  );
  expect(toDrawing).toMatchObject({ kind: "drawing", target: "xl/drawings/drawing1.xml" });
  const drawing = await opened.text("xl/drawings/drawing1.xml");
  expect(drawing).toContain('descr="Air, “A &amp; B”"');
  expect(drawing).toContain('cx="6858000" cy="3810000"');
  const images = await related("xl/drawings/drawing1.xml");
  expect(images.map(({ target }) => target)).toEqual([
    "xl/media/image1.png",
    "xl/media/image2.png",
  ]);
  for (const { id } of images) expect(drawing).toContain(`r:embed="${id}"`);
  const types = await opened.text("[Content_Types].xml");
  expect(types).toContain('PartName="/xl/media/image2.png" ContentType="image/png"');
  expect(partsOfPackage(bytes).find(({ name }) => name.endsWith("image2.png"))!.size).toBe(2);
  expect(await readWorkbook(bytes)).toBeDefined();
});
