import { aggregateSizeFromCell, type AggregateSize } from "../measure/aggregate-size";
import { alcoholFromCell } from "../measure/alcohol";
import { quoted, type CellValue } from "../measure/cell-value";
import { dateFromCell, minuteOfDayFromCell } from "../measure/date-and-time";
import { durationFromCell } from "../measure/duration";
import { isIssue, issue, type Issue } from "../measure/issue";
import { measuredFromCell } from "../measure/measured";
import { numberFromCell, type DecimalMark } from "../measure/number-from-cell";
import { anyFromCell, textFromCell, yesOrNoFromCell } from "../measure/words-from-cell";
import type { FieldKind } from "./fields";
import type { ReadAs } from "./record";

/** What a reader may know besides the cell: the unit for a value without one, and the decimal mark. */
export interface Written {
  readonly unit?: string;
  readonly decimal: DecimalMark;
}

/** Reads the cell of a field: its value, `undefined` for a blank, or why it cannot be read. */
type Reader<K extends FieldKind> = (
  cell: CellValue,
  written: Written,
) => ReadAs[K] | Issue | undefined;

/** How the cells of each kind of field are read. */
export const FIELD_READERS: { readonly [K in FieldKind]: Reader<K> } = {
  number: (cell, { decimal }) => numberFromCell(cell, decimal),
  measured: (cell, { unit, decimal }) => measuredFromCell(cell, unit, decimal),
  tolerance: (cell, { decimal }) => numberFromCell(withoutSign(cell), decimal),
  minutes: (cell, { unit, decimal }) => durationFromCell(cell, "min", unit, decimal),
  seconds: (cell, { unit, decimal }) => durationFromCell(cell, "s", unit, decimal),
  text: textFromCell,
  "yes-no": yesOrNoFromCell,
  "yes-or-amount": (cell, { decimal }) => anyFromCell(cell, decimal),
  alcohol: (cell, { unit, decimal }) => alcoholFromCell(cell, unit, decimal),
  water: (cell, { unit, decimal }) => alcoholFromCell(cell, unit, decimal),
  date: dateFromCell,
  "minute-of-day": minuteOfDayFromCell,
  "aggregate-size": aggregateSize,
};

/** A tolerance as it is often written: "±1.5", "+/- 1.5". */
function withoutSign(cell: CellValue): CellValue {
  return typeof cell === "string" ? cell.replace(/^\s*(?:±|\+\s*\/\s*[-−])\s*/, "") : cell;
}

/** A size without a unit, also in the header, is in the only unit in which it can be one. */
function aggregateSize(
  cell: CellValue,
  { unit, decimal }: Written,
): AggregateSize | undefined | Issue {
  const inInches = /^in|^"|^″/i.test(unit ?? "in");
  const read = aggregateSizeFromCell(cell, inInches ? "us" : "si", decimal);
  if (!isIssue(read)) return read;
  if (unit === undefined && read.id === "value-in-other-system") {
    return aggregateSizeFromCell(cell, "si", decimal);
  }
  const cannotBe = read.id === "value-in-other-system" || read.id === "value-cannot-be";
  return cannotBe ? issue("aggregate-size-cannot-be", { value: quoted(cell) }) : read;
}
