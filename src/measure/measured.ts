import { isBlank, type CellValue } from "./cell-value";
import { isIssue, type Issue } from "./issue";
import { numberFromCell, type DecimalMark } from "./number-from-cell";

/** A number as it stands in a record, with the unit that was written with it. */
export interface Measured {
  readonly value: number;
  /** As written, in the cell or else in the column's header. */
  readonly unit?: string;
}

const NUMBER_AND_UNIT = /^([^a-zA-Z°"″]*[\d¼½¾.])\s*([a-zA-Z°"″][\w°"″/³^. ]*)$/;

/**
 * Reads a number with or without a unit: 72, "72 °F", "4 1/2 in", "0.25 ft³".
 *
 * @param header Unit in the column's header, for a number that has none.
 * @returns The number and its unit as written; `undefined` for a blank; an issue of `numberFromCell`.
 */
export function measuredFromCell(
  value: CellValue,
  header?: string,
  decimal: DecimalMark = ".",
): Measured | undefined | Issue {
  if (isBlank(value)) return undefined;
  const split = typeof value === "string" ? NUMBER_AND_UNIT.exec(value.trim()) : null;
  const number = numberFromCell(split ? split[1]! : value, decimal);
  if (number === undefined || isIssue(number)) return number;
  return { value: number, unit: split ? split[2]!.trim() : header };
}
