import { OpenedPackage } from "../../../src/files/package/opened-package";
import { storedPackage } from "../../../src/files/package/write-package";
import { besideCells } from "../../../src/files/workbook/beside-cells";
import { readWorkbook } from "../../../src/files/workbook/read-workbook";
import { workbookOf, workbookParts } from "../bad-files";

const ROWS = '<sheetData><row r="1"><c r="A1"><v>5</v></c></row></sheetData>';

test("a chart on a sheet of its own is told as a chart, and the sheets of cells are read", async () => {
  const parts = workbookParts(ROWS);
  const text = (name: string) => new TextDecoder().decode(parts.get(name));
  const put = (name: string, content: string) => parts.set(name, new TextEncoder().encode(content));
  const drawing = 'Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/';
  const relations = (line: string) =>
    `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${line}</Relationships>`;
  put(
    "xl/workbook.xml",
    text("xl/workbook.xml").replace(
      "</sheets>",
      '<sheet name="Air" sheetId="2" r:id="rId2"/></sheets>',
    ),
  );
  put(
    "xl/_rels/workbook.xml.rels",
    text("xl/_rels/workbook.xml.rels").replace(
      "</Rel",
      `<Relationship Id="rId2" ${drawing}chartsheet" Target="chartsheets/sheet1.xml"/></Rel`,
    ),
  );
  put("xl/chartsheets/sheet1.xml", "<chartsheet/>");
  put(
    "xl/chartsheets/_rels/sheet1.xml.rels",
    relations(`<Relationship Id="rId1" ${drawing}drawing" Target="../drawings/drawing1.xml"/>`),
  );
  put("xl/drawings/drawing1.xml", "<wsDr/>");
  put(
    "xl/drawings/_rels/drawing1.xml.rels",
    relations(`<Relationship Id="rId1" ${drawing}chart" Target="../charts/chart1.xml"/>`),
  );
  put("xl/charts/chart1.xml", "<chartSpace/>");
  const bytes = storedPackage(parts);
  const { sheets } = await readWorkbook(bytes);
  expect(sheets.map(({ name, rows }) => [name, rows])).toEqual([["Loads", [[5]]]]);
  expect(await besideCells(new OpenedPackage(bytes))).toEqual(new Map([["chart", 1]]));
});

test.each([
  ["without places of its cells", "<row><c><v>1</v></c><c><v>2</v></c></row>", [[1, 2]]],
  [
    "with a blank cell between",
    '<row r="1"><c r="A1"><v>1</v></c><c r="C1"><v>3</v></c></row>',
    [[1, null, 3]],
  ],
])("a sheet %s is read", async (_, rows, read) => {
  const { sheets } = await readWorkbook(workbookOf(`<sheetData>${rows}</sheetData>`));
  expect(sheets[0]!.rows).toEqual(read);
});

test("days of a workbook that counts from 1904 are the days that it shows", async () => {
  const cell = '<sheetData><row r="1"><c r="A1" s="1"><v>44720</v></c></row></sheetData>';
  const parts = workbookParts(cell);
  const put = (name: string, content: string) => parts.set(name, new TextEncoder().encode(content));
  const workbook = new TextDecoder().decode(parts.get("xl/workbook.xml"));
  put("xl/workbook.xml", workbook.replace("<sheets>", '<workbookPr date1904="1"/><sheets>'));
  put("xl/styles.xml", STYLES_WITH_A_DAY);
  const relations = new TextDecoder().decode(parts.get("xl/_rels/workbook.xml.rels"));
  const ofStyles = `<Relationship Id="rId9" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Rel`;
  put("xl/_rels/workbook.xml.rels", relations.replace("</Rel", ofStyles));
  const [sheet] = (await readWorkbook(storedPackage(parts))).sheets;
  // Day 44720 counted from 1 January 1904.
  expect(sheet!.rows[0]![0]).toEqual(new Date("2026-06-09T00:00:00Z"));
});

/** The second format shows a day. */
const STYLES_WITH_A_DAY = `<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">
  <fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders>
  <cellStyleXfs count="1"><xf/></cellStyleXfs>
  <cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="14" applyNumberFormat="1"/></cellXfs></styleSheet>`;
