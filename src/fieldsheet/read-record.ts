import { alcoholFromCell } from "../measure/alcohol";
import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { dateFromCell, minuteOfDayFromCell } from "../measure/date-and-time";
import { numberFromCell, type DecimalMark } from "../measure/number-from-cell";
import { Problem } from "../measure/problem";
import { textFromCell, yesOrNoFromCell } from "../measure/words-from-cell";
import { FIELDS, type FieldId, type FieldKind } from "./fields";
import type { FieldRecord, FieldValues } from "./record";
import type { Columns, ColumnPlace } from "./sheet-context";

type Reader = (cell: CellValue, decimal: DecimalMark, column: ColumnPlace) => unknown;

const READERS: Readonly<Record<Exclude<FieldKind, "alcohol">, Reader>> = {
  number: (cell, decimal) => numberFromCell(cell, decimal),
  minutes: (cell, decimal, { unit }) => {
    const value = numberFromCell(cell, decimal);
    return value !== undefined && /^s(ec(ond)?s?)?$/i.test(unit ?? "") ? value / 60 : value;
  },
  text: textFromCell,
  "yes-no": yesOrNoFromCell,
  date: dateFromCell,
  "minute-of-day": minuteOfDayFromCell,
};

/**
 * Reads one row of a field sheet. A cell that cannot be read never hides the others: it is kept with
 * its problem, and everything else is read.
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
  const values: Partial<Record<FieldId, unknown>> = {};
  const cells: Partial<Record<FieldId, CellValue>> = {};
  const unreadable: Partial<Record<FieldId, Problem>> = {};
  for (const [name, place] of Object.entries(columns)) {
    const field = name as FieldId;
    const cell = (cells[field] = row[place.index] ?? null);
    try {
      const { kind } = FIELDS[field];
      const value =
        kind === "alcohol"
          ? alcoholFromCell(cell, alcoholUnitIn(row, columns), decimal)
          : READERS[kind](cell, decimal, place);
      if (value !== undefined) values[field] = value;
    } catch (problem) {
      if (!(problem instanceof Problem)) throw problem;
      unreadable[field] = problem;
    }
  }
  return {
    row: index,
    blank: row.every(isBlank),
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
