import type { IWorkbookData } from "@univerjs/core";
import type { CsvTable } from "../../files/csv/read-csv";
import { namingFile, openedFile } from "../../files/open-file";
import { readWorkbook, type FileWorkbook } from "../../files/workbook/read-workbook";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import { workbookData } from "./workbook-data";

/** More rows than this make the spreadsheet in the browser too slow to work with. */
const MOST_ROWS = 100_000;
const LONGEST_SHEET_NAME = 31;

/** A file as the spreadsheet takes it. */
export interface OpenedWorkbook {
  readonly data: Partial<IWorkbookData>;
  /** The file itself where it is a workbook, so that it can be saved with nothing else changed. */
  readonly original?: Uint8Array;
  /** What was left out or is not shown, in sentences. */
  readonly remarks: readonly string[];
}

/**
 * Opens a file in the browser; it is sent nowhere.
 *
 * @param name Name of the file.
 * @param bytes What the file holds. It decides how it is read, not the name.
 * @throws Problem with the name of the file in its sentence: `file-empty`, `file-too-large`,
 *   `file-encrypted`, `file-damaged` …
 */
export async function openFile(name: string, bytes: Uint8Array): Promise<OpenedWorkbook> {
  try {
    const file = openedFile(name, bytes, MOST_ROWS);
    if (file.kind === "text") {
      const sheet = { name: sheetNameOf(name), rows: file.table.rows.map((row) => [...row]) };
      return {
        data: dataOf(name, { sheets: [sheet] }),
        remarks: remarksOfCsv(name, file.table),
      };
    }
    const workbook = await readWorkbook(file.opened);
    return { data: dataOf(name, workbook), original: bytes, remarks: [] };
  } catch (error) {
    throw namingFile(error, name);
  }
}

function dataOf(name: string, file: FileWorkbook): Partial<IWorkbookData> {
  const rows = Math.max(0, ...file.sheets.map((sheet) => sheet.rows.length));
  if (rows === 0) throw new Problem("file-empty");
  if (rows > MOST_ROWS) throw new Problem("file-too-large", { most: MOST_ROWS });
  return workbookData(name, file);
}

function remarksOfCsv(name: string, { nulCharacters, openQuote }: CsvTable): string[] {
  return [
    ...(nulCharacters > 0 ? [say("nul-bytes-left-out", { name, count: nulCharacters })] : []),
    ...(openQuote !== undefined ? [say("quote-not-closed", { name, line: openQuote })] : []),
  ];
}

/** What a spreadsheet takes as the name of a sheet. */
function sheetNameOf(name: string): string {
  const plain = name
    .replace(/\.[^.]*$/, "")
    .replace(/[:\\/?*[\]]/g, " ")
    .trim();
  return plain.slice(0, LONGEST_SHEET_NAME) || "Sheet1";
}
