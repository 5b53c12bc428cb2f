import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { isIssue, type Issue } from "../measure/issue";
import type { DecimalMark } from "../measure/number-from-cell";
import type { ColumnPlace, Columns } from "./column-place";
import { recogniseColumns } from "./columns";
import { FIELD_READERS } from "./field-readers";
import { FIELDS, type FieldId } from "./fields";
import type { FieldRecord, FieldValues } from "./record";
import type { SheetReading } from "./sheet-reading";
import type { SheetTable } from "./sheet-table";
import { isSummaryRow } from "./summary-row";

/** What a reading may be told besides the cells. */
export interface ReadingOptions {
  /** "," where the workbook writes decimal commas. */
  readonly decimal?: DecimalMark;
  /** Position of the last header row in the block; 0 unless titles stand above it. */
  readonly headerRow?: number;
}

/** Few enough to take some thousandths of a second. */
const ROWS_IN_A_STEP = 1000;

const NOTHING_UNREADABLE = Object.freeze({});

/**
 * Reads a table of tests, in steps, each of which yields the share that is done. A cell that cannot be
 * read never hides the others: its issue stands beside the values. A row that sums up others holds no
 * test, like a blank one.
 *
 * @param table Headers and rows as they stand in the sheet.
 */
export function* readTableInSteps(
  table: SheetTable,
  { decimal = ".", headerRow = 0 }: ReadingOptions = {},
): Generator<number, SheetReading> {
  const { headers, rows } = table;
  const columns = recogniseColumns(headers);
  const fields = (Object.entries(columns) as [FieldId, ColumnPlace][]).map(([field, place]) => ({
    field,
    index: place.index,
    read: cellReader(field, place, columns, decimal),
  }));
  const records: FieldRecord[] = [];
  for (let row = 0; row < rows.length; row++) {
    if (row > 0 && row % ROWS_IN_A_STEP === 0) yield row / rows.length;
    records.push(readRow(rows[row]!, row, fields));
  }
  return {
    decimal,
    columns,
    records,
    unread: [],
    has: (field) => columns[field] !== undefined,
    cell: (row, field) => rows[row]?.[columns[field]?.index ?? -1] ?? null,
    placeOf: (row, field) => ({
      row: headerRow + (row === null ? 0 : row + 1),
      column: (field !== null && columns[field]?.index) || 0,
    }),
  };
}

/** The same in one go. */
export function readTable(table: SheetTable, options?: ReadingOptions): SheetReading {
  const steps = readTableInSteps(table, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** A column that was recognised, and how its cells are read. */
interface FieldColumn {
  readonly field: FieldId;
  readonly index: number;
  readonly read: (cell: CellValue, row: readonly CellValue[]) => unknown;
}

function cellReader(
  field: FieldId,
  place: ColumnPlace,
  columns: Columns,
  decimal: DecimalMark,
): FieldColumn["read"] {
  const read = FIELD_READERS[FIELDS[field].kind];
  const written = { unit: place.unit, decimal };
  const unitColumn = field === "alcohol" ? columns.alcoholUnit?.index : undefined;
  if (unitColumn === undefined) return (cell) => read(cell, written);
  // The unit for an amount without one: from the row's own unit column, else from the header.
  return (cell, row) => {
    const own = row[unitColumn];
    return read(cell, isBlank(own) ? written : { unit: shownValue(own), decimal });
  };
}

function readRow(
  row: readonly CellValue[],
  index: number,
  fields: readonly FieldColumn[],
): FieldRecord {
  const values: Partial<Record<FieldId, unknown>> = {};
  let unreadable: Partial<Record<FieldId, Issue>> | undefined;
  let blank = true;
  if (!isSummaryRow(row)) {
    for (const { field, index: column, read } of fields) {
      const cell = row[column] ?? null;
      if (cell === null || isBlank(cell)) continue;
      blank = false;
      const value = read(cell, row);
      if (isIssue(value)) (unreadable ??= {})[field] = value;
      else if (value !== undefined) values[field] = value;
    }
  }
  return {
    row: index,
    blank,
    values: values as FieldValues,
    unreadable: unreadable ?? NOTHING_UNREADABLE,
  };
}
