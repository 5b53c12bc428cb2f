import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { datesOfColumn } from "../measure/date-order";
import { issue, type Issue } from "../measure/issue";
import type { DecimalMark } from "../measure/number-from-cell";
import type { ColumnPlace, Columns } from "./column-place";
import { decimalOfColumn } from "./decimal-of-column";
import { isDitto } from "./ditto";
import { FIELD_READERS, type Written } from "./field-readers";
import { FIELDS, type FieldId } from "./fields";

/** How the values of a workbook are written. */
export interface WrittenIn {
  /** "," where the workbook writes decimal commas. */
  readonly decimal: DecimalMark;
  /** From which year the workbook counts its days; 1900 when absent. */
  readonly datesFrom?: 1900 | 1904;
}

/** A column that was recognised, and how its cells are read, from the top down. */
export interface FieldColumn {
  readonly field: FieldId;
  readonly index: number;
  /**
   * Reads the next cell of the column that is not blank: its value, or why it cannot be read.
   *
   * @param row The whole row, which is number `at` of the table.
   * @param before Number of the row of the test before.
   */
  readonly read: (
    cell: CellValue,
    row: readonly CellValue[],
    at: number,
    before: number,
  ) => unknown;
}

/**
 * How the cells of a column are read. What all of them show counts for each: whether decimals are
 * written with a comma, and whether the day or the month of a date comes first.
 *
 * @param columns All columns: an amount of alcohol may have its unit in another.
 */
export function columnReader(
  field: FieldId,
  place: ColumnPlace,
  columns: Columns,
  rows: readonly (readonly CellValue[])[],
  { decimal, datesFrom }: WrittenIn,
): FieldColumn {
  const { index, header, unit, opposite } = place;
  const { kind } = FIELDS[field];
  const cells = () => rows.map((row) => row[index] ?? null);
  const ofDates = kind === "date";
  const written: Written = {
    header,
    unit,
    opposite,
    decimal: kind === "text" || ofDates ? decimal : decimalOfColumn(cells(), decimal),
    ...(ofDates && { dates: { ...datesOfColumn(cells(), header), countedFrom: datesFrom } }),
  };
  const readOne = FIELD_READERS[kind];
  const unitColumn = field === "alcohol" ? columns.alcoholUnit?.index : undefined;
  let lastRow = -1;
  let last: unknown;
  const read: FieldColumn["read"] = (cell, row, at, before) => {
    if (typeof cell === "string" && isDitto(cell)) {
      // A mark for "the same" looks to the test above, through blank rows.
      if (lastRow === -1 || lastRow !== before) last = nothingAbove(cell);
    } else {
      // The unit for an amount without one: from the row's own unit column, else from the header.
      const own = unitColumn === undefined ? null : (row[unitColumn] ?? null);
      last = readOne(cell, isBlank(own) ? written : { ...written, unit: shownValue(own) });
    }
    lastRow = at;
    return last;
  };
  return { field, index, read };
}

function nothingAbove(cell: string): Issue {
  return issue("nothing-above", { value: cell.trim() });
}
