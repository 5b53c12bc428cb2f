import { aggregateSizeFromCell, type AggregateSize } from "../measure/aggregate-size";
import { alcoholFromCell } from "../measure/alcohol";
import { shownValue, type CellValue } from "../measure/cell-value";
import { dateFromCell, minuteOfDayFromCell } from "../measure/date-and-time";
import { durationFromCell } from "../measure/duration";
import { Issue } from "../measure/issue";
import { measuredFromCell } from "../measure/measured";
import { numberFromCell, type DecimalMark } from "../measure/number-from-cell";
import { Problem } from "../measure/problem";
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
  number: caught((cell, { decimal }) => numberFromCell(cell, decimal)),
  measured: caught((cell, { unit, decimal }) => measuredFromCell(cell, unit, decimal)),
  tolerance: caught((cell, { decimal }) => numberFromCell(withoutSign(cell), decimal)),
  minutes: caught((cell, { unit, decimal }) => durationFromCell(cell, "min", unit, decimal)),
  seconds: caught((cell, { unit, decimal }) => durationFromCell(cell, "s", unit, decimal)),
  text: caught(textFromCell),
  "yes-no": caught(yesOrNoFromCell),
  "yes-or-amount": caught((cell, { decimal }) => anyFromCell(cell, decimal)),
  alcohol: caught((cell, { unit, decimal }) => alcoholFromCell(cell, unit, decimal)),
  water: caught((cell, { unit, decimal }) => alcoholFromCell(cell, unit, decimal)),
  date: caught(dateFromCell),
  "minute-of-day": caught(minuteOfDayFromCell),
  "aggregate-size": caught(aggregateSize),
};

function caught<T>(read: (cell: CellValue, written: Written) => T) {
  return (cell: CellValue, written: Written): T | Issue => {
    try {
      return read(cell, written);
    } catch (problem) {
      if (problem instanceof Problem) return problem.issue;
      throw problem;
    }
  };
}

/** A tolerance as it is often written: "±1.5", "+/- 1.5". */
function withoutSign(cell: CellValue): CellValue {
  return typeof cell === "string" ? cell.replace(/^\s*(?:±|\+\s*\/\s*[-−])\s*/, "") : cell;
}

/** A size without a unit, also in the header, is in the only unit in which it can be one. */
function aggregateSize(cell: CellValue, { unit, decimal }: Written): AggregateSize | undefined {
  const inInches = /^in|^"|^″/i.test(unit ?? "in");
  try {
    return aggregateSizeFromCell(cell, inInches ? "us" : "si", decimal);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    if (unit === undefined && problem.id === "value-in-other-system") {
      return aggregateSizeFromCell(cell, "si", decimal);
    }
    const cannotBe = problem.id === "value-in-other-system" || problem.id === "value-cannot-be";
    throw cannotBe ? new Problem("aggregate-size-cannot-be", { value: shownValue(cell) }) : problem;
  }
}
