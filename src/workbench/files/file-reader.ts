import { dateToSerial } from "hucre";
import { detectDelimiter, parseCsv } from "hucre/csv";
import { readXlsx, resolveThemeColor } from "hucre/xlsx";

/** The library that reads files of other programs stays behind this module. */
export type FileWorkbook = Awaited<ReturnType<typeof readXlsx>>;
export type FileSheet = FileWorkbook["sheets"][number];
export type FileCell = NonNullable<FileSheet["cells"]> extends Map<string, infer C> ? C : never;
export type FileStyle = NonNullable<FileCell["style"]>;
export type FileColor = NonNullable<NonNullable<FileStyle["font"]>["color"]>;

/** A number as a program writes it into a CSV file; everything else stays the text that it is. */
const NUMBER = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;
/** The same with a decimal comma; "1,250" stays a text, since it can be read in two ways. */
const NUMBER_WITH_COMMA = /^-?(?:0,\d+|[1-9]\d*,(?!\d{3}$)\d+)$/;

/** Reads a workbook with its formulas and formats. */
export function readWorkbook(bytes: Uint8Array): Promise<FileWorkbook> {
  return readXlsx(bytes, { readStyles: true });
}

/**
 * Reads a CSV file as a workbook with one sheet. Programs set cells off by semicolons where the comma
 * is the decimal mark, so there, and only there, it is read as one.
 */
export function readCsv(bytes: Uint8Array, sheetName: string): FileWorkbook {
  const text = textFrom(bytes);
  const delimiter = detectDelimiter(text);
  const valueOf = (cell: string) => {
    if (NUMBER.test(cell)) return Number(cell);
    const withComma = delimiter === ";" && NUMBER_WITH_COMMA.test(cell);
    return withComma ? Number(cell.replace(",", ".")) : cell;
  };
  const rows = parseCsv(text, { delimiter }).map((cells) =>
    cells.map((cell) => (typeof cell === "string" ? valueOf(cell) : cell)),
  );
  return { sheets: [{ name: sheetName, rows }] };
}

/** The number under which a spreadsheet knows a date or time, to a hundredth of a second. */
export function serialOf(date: Date): number {
  return Math.round(dateToSerial(date) * 1e7) / 1e7;
}

/** The colour as the web writes it. */
export function webColor(color: FileColor, themeColors: string[] = []): string | undefined {
  const named = color.rgb?.slice(-6);
  const themed =
    color.theme !== undefined && themeColors.length > 0
      ? resolveThemeColor(themeColors, color.theme, color.tint)
      : undefined;
  const hex = named ?? themed?.slice(-6);
  return hex && `#${hex}`;
}

/** Older programs on Windows write CSV files in its Western code page instead of UTF-8. */
function textFrom(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
