import { cellValueFrom, isCellError, type CellValue } from "../../measure/cell-value";
import { numberFromCell } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import { textFromCell } from "../../measure/words-from-cell";

/** How one argument of a worksheet function is read, cell by cell. */
export interface Argument<T> {
  readonly name: string;
  /** Whether a result can be given without it. */
  readonly optional: boolean;
  /** A setting, such as a unit, says nothing about whether a row is blank. */
  readonly setting: boolean;
  /** In a range, a blank cell among others is a value that is missing, not an argument left out. */
  readonly neededInRange?: boolean;
  /** What a blank stands for, where the argument may be left out. */
  readonly otherwise?: T;
  /** The value; `undefined` for a blank. Throws a Problem for what cannot be read. */
  readonly read: (cell: CellValue) => T;
}

/** A number that must be given. */
export function number(name: string): Argument<number> {
  return { name, optional: false, setting: false, read: (cell) => numberFromCell(cell) as number };
}

/** A text that must be given; a number is taken as its digits. */
export function text(name: string): Argument<string> {
  return {
    name,
    optional: false,
    setting: false,
    read: textFromCell as (cell: CellValue) => string,
  };
}

/** A cell value as it stands, for an argument that is read together with another. */
export function cell(name: string): Argument<CellValue> {
  return { name, optional: false, setting: false, read: cellWithoutError };
}

/** The same argument, which may be left out or blank. */
export function optional<T>(argument: Argument<T>): Argument<T | undefined> {
  return { ...argument, optional: true };
}

/** The same argument as a setting: given once for all rows, and may be left out. */
export function setting<T>(argument: Argument<T>): Argument<T | undefined> {
  return { ...argument, optional: true, setting: true };
}

function cellWithoutError(value: CellValue): CellValue {
  if (isCellError(value)) throw new Problem("cell-error", { value: value.error });
  return value;
}

/** What the host handed over for an argument, as a table of cell values; a blank when left out. */
export function tableOf(given: unknown): CellValue[][] {
  if (!Array.isArray(given)) return [[cellValueFrom(given)]];
  const rows = given as unknown[][];
  return rows.length > 0 && (rows[0]?.length ?? 0) > 0
    ? rows.map((row) => row.map(cellValueFrom))
    : [[null]];
}
