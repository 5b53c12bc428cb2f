import { constants, deflateRawSync } from "node:zlib";
import { checksumOf } from "../../src/files/package/checksum";
import { storedPackage } from "../../src/files/package/write-package";

const text = (content: string) => new TextEncoder().encode(content);
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";

/** The parts of a small workbook around one sheet. */
export function workbookParts(sheet: string): Map<string, Uint8Array> {
  return new Map([
    [
      "[Content_Types].xml",
      text(
        `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/></Types>`,
      ),
    ],
    [
      "_rels/.rels",
      text(
        `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
      ),
    ],
    [
      "xl/workbook.xml",
      text(
        `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets><sheet name="Loads" sheetId="1" r:id="rId1"/></sheets></workbook>`,
      ),
    ],
    [
      "xl/_rels/workbook.xml.rels",
      text(
        `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
      ),
    ],
    ["xl/worksheets/sheet1.xml", text(`<worksheet xmlns="${MAIN}">${sheet}</worksheet>`)],
  ]);
}

/** A small workbook with one sheet. */
export function workbookOf(sheet: string): Uint8Array {
  return storedPackage(workbookParts(sheet));
}

/** The old container, with the names of what it holds as its directory writes them. */
export function compoundOf(name: string): Uint8Array {
  const start = Buffer.from("d0cf11e0a1b11ae1", "hex");
  return Buffer.concat([
    start,
    Buffer.alloc(1024),
    Buffer.from(name, "utf16le"),
    Buffer.alloc(1024),
  ]);
}

/**
 * A workbook whose sheet unpacks to so many megabytes of zeros, from about a thousandth of it.
 *
 * @param claimed Bytes that its directory claims.
 */
export function archiveBomb(megabytes: number, claimed: number): Uint8Array {
  const block = deflateRawSync(Buffer.alloc(1e6), { finishFlush: constants.Z_FULL_FLUSH });
  const packed = Buffer.concat([
    ...Array<Buffer>(megabytes).fill(block),
    deflateRawSync(Buffer.alloc(0)),
  ]);
  const parts = workbookParts("<sheetData/>");
  const name = "xl/worksheets/sheet1.xml";
  parts.set(name, packed);
  const bytes = Buffer.from(storedPackage(parts));
  // The part is stored as it is so far: its headers are told that it is deflated, and from what.
  for (const [signature, method, checksum, size] of [
    [0x04034b50, 8, 14, 22],
    [0x02014b50, 10, 16, 24],
  ] as const) {
    const header =
      signature === 0x04034b50 ? bytes.indexOf(name) - 30 : bytes.lastIndexOf(name) - 46;
    if (bytes.readUInt32LE(header) !== signature) throw new Error("the header is somewhere else");
    bytes.writeUInt16LE(8, header + method);
    bytes.writeUInt32LE(checksumOf(new Uint8Array(0)), header + checksum);
    bytes.writeUInt32LE(claimed, header + size);
  }
  return bytes;
}
