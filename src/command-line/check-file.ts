import type { CheckOptions } from "../fieldsheet/check-options";
import { namingFile, openedFile } from "../files/open-file";
import { readWorkbook, type FileCell } from "../files/workbook/read-workbook";
import { serialOf } from "../files/workbook/stored-values";
import { cellValueFrom, type CellValue } from "../measure/cell-value";
import { say, sentenceOf } from "../messages/pane-catalogue";
import { readSetup } from "../reading/setup/setup";
import { isSetupSheet } from "../reading/setup/setup-sheet-name";
import { checkSheet } from "./check-sheet";
import type { Said, SaidNotRead } from "./said";

/** As many as a spreadsheet takes; more are streamed. */
const MOST_ROWS = 1_048_576;

/** A sheet as read from a file; a CSV file has one without a name. */
interface SheetOfFile {
  readonly name?: string;
  readonly rows: readonly (readonly CellValue[])[];
}

/**
 * Checks every sheet of a file. One that cannot be read never hides the others, and nothing is thrown.
 *
 * @param file The name under which it is spoken of.
 */
export async function* checkFile(
  file: string,
  bytes: () => Uint8Array,
  options: CheckOptions,
  withTests: boolean,
): AsyncGenerator<Said> {
  let sheets: readonly SheetOfFile[];
  let datesFrom: 1900 | undefined;
  try {
    const { read, remarks, daysFrom1900 } = await sheetsOf(file, bytes());
    sheets = read;
    datesFrom = daysFrom1900 ? 1900 : undefined;
    yield* remarks;
  } catch (error) {
    const { id, values } = namingFile(error, file);
    yield notRead(file, sentenceOf(id, values));
    return;
  }
  let tested = false;
  // A workbook brings its own setup along, unless another is given.
  const ofFile = sheets.find(({ name = "" }) => isSetupSheet(name));
  const setup = options.setup ?? (ofFile && readSetup(ofFile.rows, options.decimal));
  for (const { name, rows } of sheets) {
    if (rows.length === 0 || isSetupSheet(name ?? "")) continue;
    const { hasTests, said } = checkSheet(
      file,
      name,
      rows,
      { ...options, setup, datesFrom },
      withTests,
    );
    tested ||= hasTests;
    yield* said;
  }
  if (!tested) yield notRead(file, say("file-without-tests", { name: file }));
}

/** What a file holds. */
interface SheetsOfFile {
  readonly read: readonly SheetOfFile[];
  readonly remarks: readonly SaidNotRead[];
  /** Whether its days are counted from 1900 here, from whichever year the file counts them. */
  readonly daysFrom1900: boolean;
}

/** Reads the sheets of a file, and what there is to say of it. */
export async function sheetsOf(file: string, bytes: Uint8Array): Promise<SheetsOfFile> {
  const opened = openedFile(file, bytes, MOST_ROWS);
  if (opened.kind === "text") {
    const { rows, nulCharacters, openQuote } = opened.table;
    return {
      read: [{ rows }],
      remarks: [
        ...(nulCharacters > 0
          ? [notRead(file, say("nul-bytes-left-out", { name: file, count: nulCharacters }), false)]
          : []),
        ...(openQuote !== undefined
          ? [notRead(file, say("quote-not-closed", { name: file, line: openQuote }))]
          : []),
      ],
      daysFrom1900: false,
    };
  }
  const { sheets } = await readWorkbook(opened.opened, false);
  const read = sheets.map(({ name, rows }) => ({
    name,
    rows: rows.map((row) => row.map(valueOf)),
  }));
  return { read, remarks: [], daysFrom1900: true };
}

function valueOf(value: FileCell["value"]): CellValue {
  return value instanceof Date ? serialOf(value) : cellValueFrom(value);
}

function notRead(file: string, message: string, amiss = true): SaidNotRead {
  return { kind: "not read", file, message, amiss };
}
