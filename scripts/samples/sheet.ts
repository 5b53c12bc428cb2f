/** What a cell holds. */
export type Value = string | number | boolean | null;

/** A cell: a value, or a formula with its result. */
export interface SampleCell {
  /** The value, or the result of the formula; `null` where that is an error. */
  readonly v: Value;
  /** The error that the formula gives, such as "#N/A". */
  readonly error?: string;
  /** The formula as people type it, with its equals sign. */
  readonly f?: string;
  /** Rows and columns over which the result of the formula spreads; this one cell when left out. */
  readonly spill?: readonly [rows: number, columns: number];
}

export interface SampleColumn {
  /** Width in characters. */
  readonly width: number;
  /** Number format, such as "0.00". */
  readonly format?: string;
  /** Formats by row, from 0, where the rows differ. */
  readonly formatOfRow?: ReadonlyMap<number, string>;
}

/** What may be typed into an area of a sheet; a blank always may. Something else is asked about, not refused. */
export interface SampleValidation {
  readonly range: string;
  /** Numbers, days or times from one to another, or one of several words. */
  readonly allows:
    | {
        readonly type: "decimal" | "whole" | "date" | "time";
        readonly from: number;
        readonly to: number;
      }
    | { readonly type: "list"; readonly values: readonly string[] };
  /** What is said beside the cell, and again where something else was typed. */
  readonly says: string;
}

/** One sheet of a sample workbook. */
export interface SampleSheet {
  readonly name: string;
  readonly columns: readonly SampleColumn[];
  /** Rows at the top that stay in view and are set in bold. */
  readonly headerRows: number;
  /** Columns in which long texts are wrapped, from 0. */
  readonly wrapped: readonly number[];
  /** Area of the spreadsheet table on the sheet, such as "A1:R37". */
  readonly table?: string;
  /** The row of the headers of that table, from 0; the first one when left out. */
  readonly tableHeader?: number;
  readonly validations?: readonly SampleValidation[];
  /** Row by row; `null` for an empty cell. */
  readonly rows: readonly (readonly (SampleCell | null)[])[];
}

/** The address of a cell, positions from 0: row 1, column 27 is "AB2". */
export function addressOf(row: number, column: number): string {
  return `${columnName(column)}${row + 1}`;
}

function columnName(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnName(Math.floor(column / 26) - 1) + last;
}
