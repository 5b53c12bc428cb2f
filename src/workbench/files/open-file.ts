import type { IWorkbookData } from "@univerjs/core";
import type { CsvTable } from "../../files/csv/read-csv";
import { namingFile, openedFile } from "../../files/open-file";
import type { OpenedPackage } from "../../files/package/opened-package";
import { besideCells, rulesOf, type BesideCells } from "../../files/workbook/beside-cells";
import { readWorkbook, type FileWorkbook } from "../../files/workbook/read-workbook";
import { workbookParts } from "../../files/workbook/workbook-parts";
import { Problem } from "../../measure/problem";
import { phrase, say } from "../../messages/pane-catalogue";
import type { Phrase } from "../../messages/sentence";
import { conditionalFormats } from "./conditional-formats";
import { workbookData } from "./workbook-data";

/** 100,000 tests with room for their headers; more make the spreadsheet in the browser too slow to work with. */
const MOST_ROWS = 100_100;
const LONGEST_SHEET_NAME = 31;

/** A file as the spreadsheet takes it. */
export interface OpenedWorkbook {
  readonly data: Partial<IWorkbookData>;
  /** The file itself where it is a workbook, so that it can be saved with nothing else changed. */
  readonly original?: Uint8Array;
  /** Names of all sheets of the file, the hidden ones too. */
  readonly sheetNames: readonly string[];
  /** What was left out or is not shown, in sentences. */
  readonly remarks: readonly string[];
}

/**
 * Opens a file in the browser; it is sent nowhere.
 *
 * @param id An id for the workbook that no other one has had.
 * @param name Name of the file.
 * @param bytes What the file holds. It decides how it is read, not the name.
 * @throws Problem with the name of the file in its sentence: `file-empty`, `file-too-large`,
 *   `file-encrypted`, `file-damaged` …
 */
export async function openFile(
  id: string,
  name: string,
  bytes: Uint8Array,
): Promise<OpenedWorkbook> {
  try {
    const file = openedFile(name, bytes, MOST_ROWS);
    if (file.kind === "text") {
      const sheet = { name: sheetNameOf(name), rows: file.table.rows.map((row) => [...row]) };
      const data = dataOf(id, name, { sheets: [sheet] });
      return { data, sheetNames: [], remarks: remarksOfCsv(name, file.table) };
    }
    const workbook = await readWorkbook(file.opened);
    return {
      data: dataOf(id, name, workbook),
      original: bytes,
      sheetNames: (await workbookParts(file.opened)).sheets.map((sheet) => sheet.name),
      remarks: await remarksOfWorkbook(name, file.opened, workbook),
    };
  } catch (error) {
    throw namingFile(error, name);
  }
}

function dataOf(id: string, name: string, file: FileWorkbook): Partial<IWorkbookData> {
  const rows = Math.max(0, ...file.sheets.map((sheet) => sheet.rows.length));
  if (rows === 0) throw new Problem("file-empty");
  if (rows > MOST_ROWS) throw new Problem("file-too-large", { most: MOST_ROWS });
  return workbookData(id, name, file);
}

function remarksOfCsv(name: string, { nulCharacters, openQuote }: CsvTable): string[] {
  return [
    ...(nulCharacters > 0 ? [say("nul-bytes-left-out", { name, count: nulCharacters })] : []),
    ...(openQuote !== undefined ? [say("quote-not-closed", { name, line: openQuote })] : []),
  ];
}

async function remarksOfWorkbook(
  name: string,
  opened: OpenedPackage,
  workbook: FileWorkbook,
): Promise<string[]> {
  const counts = await besideCells(opened);
  const unknown = await rulesNotShown(opened, workbook);
  if (unknown > 0) counts.set("conditional format", unknown);
  const tables = workbook.sheets.flatMap(({ cells }) =>
    [...(cells?.values() ?? [])].filter(({ formula }) => formula?.includes("[")),
  );
  return [
    ...(counts.size > 0
      ? [say("file-shows-not-all", { name, what: { all: counted(counts) } })]
      : []),
    ...(tables.length > 0
      ? [say("file-formulas-not-computed", { name, count: tables.length })]
      : []),
  ];
}

async function rulesNotShown(opened: OpenedPackage, workbook: FileWorkbook): Promise<number> {
  let unknown = 0;
  for (const { name, part, cells } of (await workbookParts(opened)).sheets) {
    const sheet = workbook.sheets.find((each) => each.name === name);
    if (!cells || !sheet) continue;
    const size = { rows: Infinity, columns: Infinity };
    unknown += (await rulesOf(opened, part)) - conditionalFormats(sheet, size).length;
  }
  return unknown;
}

/** What a spreadsheet takes as the name of a sheet. */
function sheetNameOf(name: string): string {
  const plain = name
    .replace(/\.[^.]*$/, "")
    .replace(/[:\\/?*[\]]/g, " ")
    .trim();
  return plain.slice(0, LONGEST_SHEET_NAME) || "Sheet1";
}

function counted(counts: ReadonlyMap<BesideCells, number>): Phrase[] {
  return [...counts].map(([what, count]) => phrase(`beside-${what}`, { count }));
}
