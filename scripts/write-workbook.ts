/** The only script that knows the library for spreadsheet files. */
import { writeCsv } from "hucre/csv";
import { writeXlsx } from "hucre/xlsx";
import type { Cell, CellStyle, DataValidation, WriteSheet } from "hucre/xlsx";
import {
  addressOf,
  type SampleCell,
  type SampleSheet,
  type SampleValidation,
  type Value,
} from "./samples/sheet";
import { withStoredResults } from "./stored-results";

/** Height of one line of text, in points. */
const LINE_HEIGHT = 15;

/** A fixed day, so that the same workbook is the same file. */
const MADE = new Date("2026-06-10T00:00:00Z");

/**
 * Writes sheets as an .xlsx file.
 *
 * A formula with a function of the add-in is stored as Excel stores it, under a name of its own and
 * as a dynamic array formula; under the name that people type it would stay `#NAME?` until the cell
 * is entered again. The cells over which a result spreads hold their part of it. The workbook opens
 * with the results that stand in it, errors among them, whether or not the add-in is there.
 */
export async function xlsxOf(title: string, sheets: readonly SampleSheet[]): Promise<Uint8Array> {
  const written = await writeXlsx({
    sheets: sheets.map(sheetOf),
    properties: { title, created: MADE, modified: MADE },
    defaultFont: { name: "Calibri", size: 11 },
  });
  return withStoredResults(written, sheets.map(errorsOf));
}

/** Writes rows of plain values as .csv. */
export function csvOf(rows: readonly (readonly Value[])[]): string {
  return `${writeCsv(rows.map((row) => [...row]))}\r\n`;
}

/** What the name of a function of the add-in begins with in the file. */
const ADD_IN = "_xldudf_";

/** `=FRESH.AIR(A1)` as Excel stores it: `_xldudf_FRESH_AIR(A1)`. */
export function storedFormula(typed: string): string {
  return typed.replace(/^=/, "").replace(/\bFRESH((?:\.[A-Z\d]+)+)\(/g, (_, name: string) => {
    return `${ADD_IN}FRESH${name.replaceAll(".", "_")}(`;
  });
}

function errorsOf({ rows }: SampleSheet): Map<string, string> {
  const errors = rows.flatMap((row, r) =>
    row.flatMap((cell, c) => (cell?.error ? [[addressOf(r, c), cell.error] as const] : [])),
  );
  return new Map(errors);
}

function sheetOf(sheet: SampleSheet): WriteSheet {
  const { name, columns, headerRows, table, tableHeader = 0, validations = [], rows } = sheet;
  const cells = new Map<string, Partial<Cell>>();
  rows.forEach((row, r) =>
    row.forEach((cell, c) => {
      if (cell) cells.set(`${r},${c}`, cellOf(sheet, cell, r, c));
    }),
  );
  const width = Math.max(...rows.map((row) => row.length));
  return {
    name,
    rows: rows.map(() => Array.from({ length: width }, () => null)),
    columns: columns.map((column) => ({ width: column.width })),
    cells,
    rowDefs: new Map(rows.map((_, r) => [r, { height: heightOf(sheet, r) }])),
    freezePane: { rows: headerRows },
    ...(table && { tables: [tableOf(name, table, rows[tableHeader]!)] }),
    ...(validations.length > 0 && { dataValidations: validations.map(validationOf) }),
  };
}

function validationOf({ range, allows, says }: SampleValidation): DataValidation {
  const said = {
    showInputMessage: true,
    inputMessage: says,
    showErrorMessage: true,
    errorMessage: says,
  };
  const asked = { range, allowBlank: true, errorStyle: "warning" as const, ...said };
  if (allows.type === "list") return { ...asked, type: "list", values: [...allows.values] };
  const { type, from, to } = allows;
  return { ...asked, type, operator: "between", formula1: String(from), formula2: String(to) };
}

function cellOf(sheet: SampleSheet, { v, f, spill }: SampleCell, r: number, c: number) {
  const style = styleOf(sheet, r, c);
  if (f === undefined) return { value: v, style };
  const stored = storedFormula(f);
  if (!stored.includes(ADD_IN)) return { style, formula: stored, formulaResult: v };
  const [height, width] = spill ?? [1, 1];
  return {
    style,
    formula: stored,
    formulaResult: v,
    formulaType: "array" as const,
    formulaRef: `${addressOf(r, c)}${spill ? `:${addressOf(r + height - 1, c + width - 1)}` : ""}`,
    formulaDynamic: true,
  };
}

/** Room for the longest wrapped text of the row; a spreadsheet does not work it out on opening. */
function heightOf(sheet: SampleSheet, r: number): number {
  const lines = sheet.rows[r]!.map((cell, c) => {
    const length = isWrapped(sheet, r, c) ? String(cell?.v ?? "").length : 0;
    return Math.ceil((1.15 * length) / sheet.columns[c]!.width);
  });
  return LINE_HEIGHT * Math.max(1, ...lines);
}

function isWrapped(
  { headerRows, table, tableHeader = 0, wrapped }: SampleSheet,
  r: number,
  c: number,
): boolean {
  if (r >= headerRows) return wrapped.includes(c);
  return table !== undefined && r === tableHeader;
}

function styleOf(sheet: SampleSheet, r: number, c: number): CellStyle {
  const { headerRows, columns } = sheet;
  const header = r < headerRows;
  const format = columns[c]?.formatOfRow?.get(r) ?? columns[c]?.format;
  return {
    ...(header && { font: { name: "Calibri", size: 11, bold: true } }),
    ...(!header && format && { numFmt: format }),
    alignment: { vertical: "top", wrapText: isWrapped(sheet, r, c) },
  };
}

function tableOf(sheet: string, range: string, headers: readonly (SampleCell | null)[]) {
  const width = headers.indexOf(null);
  return {
    name: `${sheet}Table`,
    range,
    columns: headers.slice(0, width).map((cell) => ({ name: String(cell!.v) })),
    style: "TableStyleLight1",
  };
}
