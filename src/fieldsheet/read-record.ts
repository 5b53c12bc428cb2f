import { aggregateSizeFromCell, type AggregateSize } from "../measure/aggregate-size";
import { alcoholFromCell } from "../measure/alcohol";
import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { dateFromCell, minuteOfDayFromCell } from "../measure/date-and-time";
import { durationFromCell } from "../measure/duration";
import { measuredFromCell } from "../measure/measured";
import { numberFromCell, type DecimalMark } from "../measure/number-from-cell";
import { Problem } from "../measure/problem";
import { anyFromCell, textFromCell, yesOrNoFromCell } from "../measure/words-from-cell";
import type { Columns } from "../reading/column-place";
import { FIELDS, type FieldId, type FieldKind } from "../reading/fields";
import { isSummaryRow } from "../reading/summary-row";
import type { FieldRecord, FieldValues, ReadAs } from "./record";

/** What a reader may know besides the cell: the unit for a value without one, and the decimal mark. */
interface Written {
  readonly unit?: string;
  readonly decimal: DecimalMark;
}

const READERS: {
  readonly [K in FieldKind]: (cell: CellValue, written: Written) => ReadAs[K] | undefined;
} = {
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

/**
 * Reads one row of a field sheet. A cell that cannot be read never hides the others: it is kept with
 * its problem, and everything else is read. A row that sums up others holds no test, like a blank one.
 *
 * @param row The cells of the row.
 * @param index Position of the row in the table, from 0.
 * @param columns What the columns hold.
 * @param decimal How decimals are written.
 */
export function readRecord(
  row: readonly CellValue[],
  index: number,
  columns: Columns,
  decimal: DecimalMark = ".",
): FieldRecord {
  if (isSummaryRow(row)) return { row: index, blank: true, values: {}, cells: {}, unreadable: {} };
  const values: Partial<Record<FieldId, unknown>> = {};
  const cells: Partial<Record<FieldId, CellValue>> = {};
  const unreadable: Partial<Record<FieldId, Problem>> = {};
  for (const [name, place] of Object.entries(columns)) {
    const field = name as FieldId;
    const cell = (cells[field] = row[place.index] ?? null);
    try {
      const unit = field === "alcohol" ? alcoholUnitIn(row, columns) : place.unit;
      const value = READERS[FIELDS[field].kind](cell, { unit, decimal });
      if (value !== undefined) values[field] = value;
    } catch (problem) {
      if (!(problem instanceof Problem)) throw problem;
      unreadable[field] = problem;
    }
  }
  return {
    row: index,
    blank: Object.values(cells).every(isBlank),
    values: values as FieldValues,
    cells,
    unreadable,
  };
}

/** The unit for an amount without one: from the row's own unit column, else from the header. */
function alcoholUnitIn(row: readonly CellValue[], columns: Columns): string | undefined {
  const written = columns.alcoholUnit && row[columns.alcoholUnit.index];
  return isBlank(written) ? columns.alcohol?.unit : shownValue(written);
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
