import type { IWorkbookData } from "@univerjs/core";
import { Problem } from "../../measure/problem";
import { readCsv, readWorkbook, type FileWorkbook } from "./file-reader";
import { workbookData } from "./workbook-data";

/** More rows than this make the spreadsheet in the browser too slow to work with. */
const MOST_ROWS = 100_000;

/**
 * Opens a file in the browser; it is sent nowhere.
 *
 * @param name Name of the file. A name that ends in .csv or .txt is read as CSV.
 * @param bytes What the file holds.
 * @throws Problem `file-not-read`, `file-empty`, `file-too-large`.
 */
export async function openFile(name: string, bytes: Uint8Array): Promise<Partial<IWorkbookData>> {
  const file = await read(name, bytes);
  const rows = Math.max(0, ...file.sheets.map((sheet) => sheet.rows.length));
  if (rows === 0) throw new Problem("file-empty", { name });
  if (rows > MOST_ROWS) throw new Problem("file-too-large", { name, rows, most: MOST_ROWS });
  return workbookData(name, file);
}

async function read(name: string, bytes: Uint8Array): Promise<FileWorkbook> {
  try {
    if (/\.(csv|txt)$/i.test(name))
      return readCsv(bytes, name.replace(/\.[^.]*$/, "").slice(0, 31));
    return await readWorkbook(bytes);
  } catch {
    throw new Problem("file-not-read", { name });
  }
}
