import { aggregateSizeFromCell, type AggregateSize } from "../measure/aggregate-size";
import { alcoholFromCell } from "../measure/alcohol";
import { boundedFromCell, isOver, type Bounded } from "../measure/bounded";
import { quoted, type CellValue } from "../measure/cell-value";
import { countFromCell, CUPS } from "../measure/counted";
import { dateFromCell, type DatesWritten } from "../measure/date";
import { minuteOfDayFromCell } from "../measure/time-of-day";
import { durationFromCell, minutesAsClock } from "../measure/duration";
import { anyFromCell, faultFromCell, type Asked } from "../measure/fault-from-cell";
import { isIssue, issue, type Issue } from "../measure/issue";
import { measuredFromCell } from "../measure/measured";
import { numberFromCell, type DecimalMark } from "../measure/number-from-cell";
import { textFromCell, yesOrNoFromCell } from "../measure/words-from-cell";
import { SETTLE_WITHIN_MINUTES } from "../methods/volumetric-air/settled-level";
import { airSpecificationFromCell, airToleranceFromCell, percentFromCell } from "./air-in-percent";
import { densityFromCell } from "./density-in-unit";
import type { FieldKind } from "./fields";
import { foamFromCell } from "./foam-from-cell";
import type { ReadAs } from "./record";

/** What a reader may know besides the cell. */
export interface Written extends Asked {
  /** Unit for a value without one. */
  readonly unit?: string;
  readonly decimal: DecimalMark;
  /** How the dates of the column are written. */
  readonly dates?: DatesWritten;
}

/** Reads the cell of a field: its value, `undefined` for a blank, or why it cannot be read. */
type Reader<K extends FieldKind> = (
  cell: CellValue,
  written: Written,
) => ReadAs[K] | Issue | undefined;

/** How the cells of each kind of field are read. */
export const FIELD_READERS: { readonly [K in FieldKind]: Reader<K> } = {
  number: (cell, { decimal }) => numberFromCell(cell, decimal),
  percent: (cell, { decimal }) => percentFromCell(cell, decimal),
  measured: (cell, { unit, decimal }) => measuredFromCell(cell, unit, decimal),
  density: (cell, { unit, decimal }) => densityFromCell(cell, unit, decimal),
  cups: (cell, { decimal }) => countFromCell(cell, CUPS, decimal),
  foam: (cell, asked) => foamFromCell(cell, asked, asked.decimal),
  settling: (cell, { unit, decimal, opposite }) =>
    (opposite ? withinTime(cell) : undefined) ??
    asClock(cell) ??
    within(SETTLE_WITHIN_MINUTES, cell, (time) => durationFromCell(time, "min", unit, decimal)),
  specification: (cell, { decimal }) => airSpecificationFromCell(cell, decimal),
  tolerance: (cell, { decimal }) => airToleranceFromCell(cell, decimal),
  minutes: (cell, { unit, decimal }) =>
    asClock(cell) ?? durationFromCell(cell, "min", unit, decimal),
  seconds: (cell, { unit, decimal }) => durationFromCell(cell, "s", unit, decimal),
  text: textFromCell,
  "yes-no": yesOrNoFromCell,
  fault: faultFromCell,
  "yes-or-amount": (cell, written) => anyFromCell(cell, written, written.decimal),
  alcohol: (cell, { unit, decimal }) => alcoholFromCell(cell, unit, decimal),
  water: (cell, { unit, decimal }) => alcoholFromCell(cell, unit, decimal),
  date: (cell, { dates }) => dateFromCell(cell, dates),
  "minute-of-day": minuteOfDayFromCell,
  "aggregate-size": aggregateSize,
};

/** A number written as more or less than another, as far as that tells whether it is over a limit. */
function within(
  limit: number,
  cell: CellValue,
  read: (cell: CellValue) => number | undefined | Issue,
): Bounded | undefined | Issue {
  const bounded = boundedFromCell(cell, read);
  if (bounded === undefined || isIssue(bounded)) return bounded;
  return isOver(bounded, limit) === undefined
    ? issue("bound-leaves-open", { value: quoted(cell), limit })
    : bounded;
}

/** No level is known to be steady in less than a minute, and no load is given less time than that. */
function asClock(cell: CellValue): Issue | undefined {
  return typeof cell === "number" ? minutesAsClock(cell, "duration-as-clock") : undefined;
}

/** An answer to whether the level was steady in time; `undefined` for anything but yes or no. */
function withinTime(cell: CellValue): Bounded | undefined {
  const inTime = yesOrNoFromCell(cell);
  if (typeof inTime !== "boolean") return undefined;
  return { value: SETTLE_WITHIN_MINUTES, than: inTime ? "less" : "more" };
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
