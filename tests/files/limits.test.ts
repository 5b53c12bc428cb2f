import { buildSync } from "esbuild";
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { storedPackage } from "../../src/files/package/write-package";
import { archiveBomb, compoundOf, workbookOf } from "./bad-files";

jest.setTimeout(120_000);

/** Megabytes that the whole program may take, Node itself among them. */
const MOST_MEMORY = 300;
/** Milliseconds after which a program is stopped: far beyond the tenths of a second that it takes. */
const LONGEST = 15_000;

const folder = mkdtempSync(join(tmpdir(), "limits-"));
const program = join(folder, "open.mjs");
const cell = (reference: string, inside = "<v>1</v>") => `<c r="${reference}">${inside}</c>`;
const sheet = (rows: string, around = "") => workbookOf(`<sheetData>${rows}</sheetData>${around}`);
const utf8 = (text: string) => Buffer.from(text, "utf8");
const openpyxl = readFileSync("tests/workbench/files/by-openpyxl.xlsx");

beforeAll(() => {
  buildSync({
    entryPoints: ["tests/files/open-in-child.ts"],
    outfile: program,
    bundle: true,
    platform: "node",
    format: "esm",
    logLevel: "error",
  });
});

const damaged = () => {
  const bytes = Buffer.from(openpyxl);
  bytes.fill(0x55, 3000, 3400);
  return bytes;
};

test.each<[what: string, name: string, bytes: () => Uint8Array, ended: string]>([
  ["an old workbook", "day.xls", () => compoundOf("Workbook"), "file-old-workbook"],
  ["an encrypted workbook", "day.xlsx", () => compoundOf("EncryptedPackage"), "file-encrypted"],
  ["an OpenDocument file", "day.ods", openDocument, "file-opendocument"],
  ["a workbook cut off", "day.xlsx", () => openpyxl.subarray(0, 6000), "file-damaged"],
  ["a damaged workbook", "day.xlsx", damaged, "file-damaged"],
  ["1 GB as the archive says", "day.xlsx", () => archiveBomb(1000, 1e9), "file-unpacks-too-large"],
  ["1 GB that the archive hides", "day.xlsx", () => archiveBomb(1000, 1e5), "file-damaged"],
  [
    "a whole sheet as one array formula",
    "day.xlsx",
    () => sheet(`<row r="1">${cell("A1", '<f t="array" ref="A1:XFD1048576">1</f><v>1</v>')}</row>`),
    "file-claims-too-much",
  ],
  [
    "two cells at the corners of a sheet",
    "day.xlsx",
    () => sheet(`<row r="1">${cell("A1")}</row><row r="1048576">${cell("XFD1048576")}</row>`),
    "file-claims-too-much",
  ],
  [
    "a picture named as CSV",
    "day.csv",
    () => utf8("\x89PNG\r\n\x1a\n\0\0\0\rIHDR"),
    "file-of-another-kind",
  ],
  [
    "a program named as a workbook",
    "day.xlsx",
    () => utf8("MZ\x01\x02\x03\x04\x05"),
    "file-of-another-kind",
  ],
  ["text named as a workbook", "day.xlsx", () => utf8("Sample,Air\n"), "file-of-another-kind"],
  [
    "a web page named as a workbook",
    "day.xls",
    () => utf8("<html><table>"),
    "file-of-another-kind",
  ],
  ["a CSV line of 50 MB", "day.csv", () => Buffer.alloc(50e6, "5.25,"), "file-line-too-long"],
  [
    "a quote that is never closed",
    "day.csv",
    () => utf8(`a,"b\n${"1,2\n".repeat(1e6)}`),
    "file-line-too-long",
  ],
  ["a CSV file of a million rows", "day.csv", () => utf8("1,2\n".repeat(1e6)), "file-too-large"],
  ["an empty file", "day.csv", () => new Uint8Array(0), "file-empty"],
])("%s is told in a sentence, soon and with little memory", (what, name, bytes, ended) => {
  const opened = openInChild(name, bytes());
  expect(opened.ended).toBe(ended);
  if (opened.megabytes > MOST_MEMORY) throw new Error(`${what} took ${opened.megabytes} MB`);
});

test.each<[what: string, name: string, bytes: () => Uint8Array]>([
  [
    "a range in use that is not in use",
    "day.xlsx",
    () =>
      workbookOf(
        `<dimension ref="A1:XFD1048576"/><sheetData><row r="1">${cell("A1")}</row></sheetData>`,
      ),
  ],
  [
    "a million blank rows that have a format",
    "day.xlsx",
    () =>
      sheet(
        `<row r="1">${cell("A1")}</row>${Array.from({ length: 1e5 }, (_, i) => `<row r="${i * 10 + 2}"><c r="A${i * 10 + 2}" s="0"/></row>`).join("")}`,
      ),
  ],
  [
    "rules and merged cells over the whole sheet",
    "day.xlsx",
    () =>
      sheet(
        `<row r="1">${cell("A1")}</row>`,
        '<mergeCells><mergeCell ref="B1:XFD1048576"/></mergeCells><conditionalFormatting sqref="A1:XFD1048576"><cfRule type="expression" priority="1"><formula>1</formula></cfRule></conditionalFormatting><dataValidations><dataValidation type="whole" sqref="A1:XFD1048576"><formula1>1</formula1></dataValidation></dataValidations>',
      ),
  ],
])("%s: what is there is read, with little memory", (what, name, bytes) => {
  const opened = openInChild(name, bytes());
  expect(opened.ended).toBe("read");
  if (opened.megabytes > MOST_MEMORY) throw new Error(`${what} took ${opened.megabytes} MB`);
});

function openInChild(name: string, bytes: Uint8Array) {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  const told = execFileSync(process.execPath, [program, path], {
    encoding: "utf8",
    timeout: LONGEST,
  });
  return JSON.parse(told) as { ended: string; seconds: number; megabytes: number };
}

function openDocument(): Uint8Array {
  return storedPackage(
    new Map([
      ["mimetype", utf8("application/vnd.oasis.opendocument.spreadsheet")],
      ["content.xml", utf8("<office:document-content/>")],
    ]),
  );
}
