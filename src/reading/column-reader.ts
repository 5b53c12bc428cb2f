import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { datesOfColumn } from "../measure/date-order";
import { isIssue, issue } from "../measure/issue";
import type { DecimalMark } from "../measure/number-from-cell";
import type { ColumnPlace, Columns } from "./column-place";
import { numbersOfColumn, ungrouped } from "./decimal-of-column";
import { isDitto } from "./ditto";
import { FIELD_READERS, type Written } from "./field-readers";
import { FIELDS, type FieldId } from "./fields";
import type { ReadTests } from "./read-tests";
import { fieldHoldsAWord } from "./testers-words";

/** How the values of a workbook are written. */
export interface WrittenIn {
  /** "," where the workbook writes decimal commas. */
  readonly decimal: DecimalMark;
  /** From which year the workbook counts its days; 1900 when absent. */
  readonly datesFrom?: 1900 | 1904;
  /** The decimal mark that the texts of the whole sheet show, if any. */
  readonly decimalOfSheet: () => DecimalMark | undefined;
}

/** Whether the cells of a field hold numbers, not words, dates or times of day. */
export function isWrittenInNumbers(field: FieldId): boolean {
  const { kind } = FIELDS[field];
  return kind !== "text" && kind !== "date" && kind !== "minute-of-day";
}

/** Reads a column from one row to before another; stretches are read from the top down. */
export type ColumnReader = (from: number, to: number) => void;

/**
 * Reads the column of a field. What all its cells show counts for each: whether decimals are written with
 * a comma, and whether the day or the month of a date comes first. A cell that cannot be read never hides
 * the others: its issue stands beside the values.
 *
 * @param columns All columns: an amount of alcohol may have its unit in another.
 * @param tests Takes what is read.
 */
export function columnReader(
  field: FieldId,
  place: ColumnPlace,
  columns: Columns,
  rows: readonly (readonly CellValue[])[],
  tests: ReadTests,
  { decimal: workbook, datesFrom, decimalOfSheet }: WrittenIn,
): ColumnReader {
  const { index, header, unit, opposite } = place;
  const { kind } = FIELDS[field];
  const cells = rows.map((row) => row[index] ?? null);
  const ofDates = kind === "date";
  const { decimal, thousands } = isWrittenInNumbers(field)
    ? numbersOfColumn(cells, workbook, decimalOfSheet)
    : { decimal: workbook, thousands: undefined };
  const written: Written = {
    header,
    unit,
    opposite,
    decimal,
    ...(ofDates && { dates: { ...datesOfColumn(cells, header), countedFrom: datesFrom } }),
  };
  const readOne = FIELD_READERS[kind];
  const unitColumn = field === "alcohol" ? columns.alcoholUnit?.index : undefined;
  const wordIn = fieldHoldsAWord(field, header);
  const values = tests.column(field);
  const { blank } = tests;
  // The unit for an amount without one: from the row's own unit column, else from the header.
  const unitIn = (row: number) => {
    const own = unitColumn === undefined ? null : (rows[row]![unitColumn] ?? null);
    return isBlank(own) ? written : { ...written, unit: shownValue(own) };
  };
  // A mark for "the same" looks to the test above, through blank rows.
  let test = -1;
  let testWithCell = -1;
  // Columns repeat themselves; the same cell is read once.
  let lastCell: CellValue = null;
  let last: unknown;
  return (from, to) => {
    for (let row = from; row < to; row++) {
      if (blank[row]) continue;
      const before = test;
      test = row;
      const cell = cells[row]!;
      if (cell === null || cell !== lastCell) {
        if (isBlank(cell)) continue;
        if (typeof cell !== "string" || !isDitto(cell)) {
          const number = thousands && typeof cell === "string" ? ungrouped(cell, thousands) : cell;
          last = readOne(number, unitIn(row));
          lastCell = unitColumn === undefined ? cell : null;
        } else if (testWithCell === -1 || testWithCell !== before) {
          last = issue("nothing-above", { value: cell.trim() });
          lastCell = null;
        }
      }
      testWithCell = row;
      const issued = isIssue(last) ? last : undefined;
      // A name of a sample is read whatever else stands beside it, "S-3 void".
      const word = issued || field === "sample" ? wordIn?.(cell) : undefined;
      if (word && !tests.wordOf(row)) tests.say(row, { ...word, field });
      if (word && field !== "sample") continue;
      if (issued) tests.cannotRead(row, field, issued);
      else values[row] = last;
    }
  };
}
