import { cellErrorIssue } from "../../measure/cell-error-issue";
import { isBlank, isCellError, type CellValue } from "../../measure/cell-value";
import { at, issue, type Issue } from "../../measure/issue";
import { numberFromCell } from "../../measure/number-from-cell";
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
  /** The value in a cell that is not blank, or why it cannot be read. */
  readonly read: (cell: CellValue) => T | undefined | Issue;
}

/** The values that a calculation gets from its arguments. */
export type ReadValues<A extends readonly Argument<unknown>[]> = {
  [I in keyof A]: A[I] extends Argument<infer T> ? T : never;
};

/** A number that must be given. */
export function number(name: string): Argument<number> {
  return { name, optional: false, setting: false, read: numberFromCell };
}

/** A text that must be given; a number is taken as its digits. */
export function text(name: string): Argument<string> {
  return { name, optional: false, setting: false, read: textFromCell };
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

/**
 * Reads one cell for an argument. An issue has the argument's name as its place: `argument-missing` for a
 * blank that cannot be left out, or one of the argument's own reading.
 */
export function readArgument<T>(argument: Argument<T>, cell: CellValue): T | undefined | Issue {
  if (!isBlank(cell)) return at(argument.name, argument.read(cell));
  if (argument.optional) return argument.otherwise;
  return at(argument.name, issue("argument-missing"));
}

function cellWithoutError(value: CellValue): CellValue | Issue {
  return isCellError(value) ? cellErrorIssue(value) : value;
}
