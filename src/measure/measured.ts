import { isBlank, type CellValue } from "./cell-value";
import { numberFromCell, numberFromText, type DecimalMark } from "./number-from-cell";

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
 * @returns The number and its unit as written; `undefined` for a blank.
 * @throws Problem, those of `numberFromCell`.
 */
export function measuredFromCell(
  value: CellValue,
  header?: string,
  decimal: DecimalMark = ".",
): Measured | undefined {
  if (isBlank(value)) return undefined;
  const split = typeof value === "string" ? NUMBER_AND_UNIT.exec(value.trim()) : null;
  if (split) return { value: numberFromText(split[1]!, decimal), unit: split[2]!.trim() };
  return { value: numberFromCell(value, decimal)!, unit: header };
}
