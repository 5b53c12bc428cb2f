import { Problem } from "../measure/problem";
import { phrase } from "../messages/pane-catalogue";
import { readCsv, type CsvTable } from "./csv/read-csv";
import { kindOfFile } from "./file-kind";
import { OpenedPackage } from "./package/opened-package";

/** What a file is, with its limits looked at and nothing large built from it yet. */
export type OpenedFile =
  | { readonly kind: "workbook"; readonly opened: OpenedPackage }
  | { readonly kind: "text"; readonly table: CsvTable };

/** Bytes. More cannot be held together with what is made of it. */
const MOST_BYTES = 300e6;

const NAMED_AS_WORKBOOK = /\.(?:xlsx|xlsm|xls|xlsb|ods)$/i;

/**
 * Opens a file by what it holds; its name only tells text that is named as a workbook.
 *
 * @param mostRows So many rows of a CSV file are taken.
 * @throws Problem with a sentence for whatever is no workbook and no CSV file, or claims too much.
 */
export function openedFile(name: string, bytes: Uint8Array, mostRows: number): OpenedFile {
  if (bytes.length === 0) throw new Problem("file-empty");
  if (bytes.length > MOST_BYTES)
    throw new Problem("file-unpacks-too-large", {
      size: megabytes(bytes.length),
      most: megabytes(MOST_BYTES),
    });
  if (kindOfFile(bytes) === "workbook")
    return { kind: "workbook", opened: new OpenedPackage(bytes) };
  if (NAMED_AS_WORKBOOK.test(name))
    throw new Problem("file-of-another-kind", { kind: phrase("holds-text") });
  return { kind: "text", table: readCsv(bytes, mostRows) };
}

/** A problem of a file with the name of the file in its sentence. */
export function namingFile(error: unknown, name: string): Problem {
  if (error instanceof Problem) return new Problem(error.id, { ...error.values, name });
  return new Problem("file-not-read", { name });
}

function megabytes(bytes: number): number {
  return Math.round(bytes / 1e6);
}
