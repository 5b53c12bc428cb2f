import { packageWith } from "../package/write-package";

const DECLARATION = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n`;
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";

const PARTS: Readonly<Record<string, string>> = {
  "[Content_Types].xml":
    `<Types xmlns="${PACKAGE}/content-types">` +
    `<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
    `<Default Extension="xml" ContentType="application/xml"/>` +
    `<Override PartName="/xl/workbook.xml" ContentType="${TYPE}.sheet.main+xml"/>` +
    `<Override PartName="/xl/styles.xml" ContentType="${TYPE}.styles+xml"/></Types>`,
  "_rels/.rels":
    `<Relationships xmlns="${PACKAGE}/relationships">` +
    `<Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets></sheets></workbook>`,
  "xl/_rels/workbook.xml.rels":
    `<Relationships xmlns="${PACKAGE}/relationships">` +
    `<Relationship Id="rId1" Type="${OFFICE}/styles" Target="styles.xml"/></Relationships>`,
  "xl/styles.xml":
    `<styleSheet xmlns="${MAIN}">` +
    `<fonts count="1"><font><sz val="11"/><name val="Calibri"/><family val="2"/></font></fonts>` +
    `<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>` +
    `<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>` +
    `<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>` +
    `<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs>` +
    `<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`,
};

/** A workbook package without a sheet, for sheets that came from no workbook. */
export function emptyWorkbook(): Promise<Uint8Array> {
  const encoder = new TextEncoder();
  const parts = Object.entries(PARTS).map(
    ([name, text]) => [name, encoder.encode(DECLARATION + text)] as const,
  );
  return packageWith(undefined, new Map(parts));
}
