import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { isIssue, type Issue } from "../measure/issue";
import type { DecimalMark } from "../measure/number-from-cell";
import type { ColumnPlace, Columns } from "./column-place";
import { columnReader, type FieldColumn } from "./column-reader";
import { READING_FIELDS, type FieldId } from "./fields";
import type { FieldRecord, FieldValues } from "./record";
import type { SheetReading } from "./sheet-reading";
import type { SheetTable } from "./sheet-table";
import type { UnreadColumn } from "./unread-column";
import { unfitSettings } from "./kept-columns";
import { recognise } from "./recognise";
import type { KeptColumn, RecognisedColumn, SheetColumn } from "./recognition";
import { isSummaryRow } from "./summary-row";
import type { Guard } from "./terms";
import { testersWordIn, type TestersWord } from "./testers-word";

/** What a reading may be told besides the cells. */
export interface ReadingOptions {
  /** "," where the workbook writes decimal commas. */
  readonly decimal?: DecimalMark;
  /** From which year the workbook counts its days; 1900 when absent. */
  readonly datesFrom?: 1900 | 1904;
  /** What the user has said of columns. */
  readonly kept?: readonly KeptColumn[];
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
  { decimal = ".", datesFrom, headerRow = 0, kept = [] }: ReadingOptions = {},
): Generator<number, SheetReading> {
  const { rows } = table;
  const sheetColumns = columnsOf(table);
  const { columns: found, all } = recognise(sheetColumns, kept);
  const columns = table.titles ? withTitles(found, table.headers) : found;
  const written = { decimal, datesFrom };
  const read: ReadColumns = {
    fields: (Object.entries(columns) as [FieldId, ColumnPlace][]).map(([field, place]) =>
      columnReader(field, place, columns, rows, written),
    ),
    own: new Map(
      HOLD_A_WORD.map((field) => [field, testersWordIn(columns[field]?.header ?? "")] as const),
    ),
    beside: all
      .filter((column) => column.state !== "read" && !isOfAnother(column))
      .map(({ index, header }) => ({ index, says: testersWordIn(header) })),
  };
  const records: FieldRecord[] = [];
  let before = -1;
  for (let row = 0; row < rows.length; row++) {
    if (row > 0 && row % ROWS_IN_A_STEP === 0) yield row / rows.length;
    const record = readRow(rows[row]!, row, read, before);
    if (!record.blank) before = row;
    records.push(record);
  }
  return {
    decimal,
    columns,
    records,
    recognised: all,
    unfit: unfitSettings(sheetColumns, kept),
    unread: unreadColumns(all, rows),
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

/** So many cells tell what a column holds. */
const CELLS_LOOKED_AT = 200;

function columnsOf({ headers, titles, rows }: SheetTable): SheetColumn[] {
  const some = rows.slice(0, CELLS_LOOKED_AT);
  return headers.map((header, index) => ({
    headers: titles?.[index] ?? [shownValue(header)],
    cells: some.map((row) => row[index] ?? null),
  }));
}

/** A header that stands below titles is called by all of them. */
function withTitles(columns: Columns, headers: readonly CellValue[]): Columns {
  const places = Object.entries(columns).map(([field, place]) => {
    return [field, { ...place, header: shownValue(headers[place.index]) }];
  });
  return Object.fromEntries(places);
}

/** The columns that hold something and were taken for nothing, or could be one of several things. */
function unreadColumns(
  all: readonly RecognisedColumn[],
  rows: readonly (readonly CellValue[])[],
): UnreadColumn[] {
  return all.flatMap((column) => {
    if (column.state !== "asked" && column.state !== "unknown") return [];
    const { index, header, because, decides } = column;
    const touches = (row: number) => !isBlank(rows[row]?.[index]);
    if (!rows.some((_, row) => touches(row))) return [];
    const mayBe = column.state === "asked" ? column.candidates : column.mayBe;
    return [{ index, header, because, decides, mayBe, touches }];
  });
}

/** The columns of a table and what is looked for in them. */
interface ReadColumns {
  readonly fields: readonly FieldColumn[];
  /** Says what a word in the place of a reading or a result means, by the field. */
  readonly own: ReadonlyMap<FieldId, (cell: CellValue) => TestersWord | undefined>;
  /** Columns that are no field, in which the tester may have called a test void. */
  readonly beside: readonly {
    readonly index: number;
    readonly says: (cell: CellValue) => TestersWord | undefined;
  }[];
}

/** Fields in whose place, or beside whose value, people write that a test is void. */
const HOLD_A_WORD: readonly FieldId[] = [...READING_FIELDS, "air", "sample"];

const OF_ANOTHER_MATTER: ReadonlySet<Guard> = new Set<Guard>([
  "other test",
  "material",
  "company",
  "place",
  "arrival",
  "departure",
]);

/** Whether a column is about something else, whatever it calls void. */
function isOfAnother(column: RecognisedColumn): boolean {
  return column.state === "not ours" && OF_ANOTHER_MATTER.has(column.guard);
}

function readRow(
  row: readonly CellValue[],
  index: number,
  { fields, own, beside }: ReadColumns,
  before: number,
): FieldRecord {
  const values: Partial<Record<FieldId, unknown>> = {};
  let unreadable: Partial<Record<FieldId, Issue>> | undefined;
  let testersWord: TestersWord | undefined;
  let blank = true;
  if (!isSummaryRow(row)) {
    for (const { field, index: column, read } of fields) {
      const cell = row[column] ?? null;
      if (cell === null || isBlank(cell)) continue;
      blank = false;
      const value = read(cell, row, index, before);
      // A name of a sample is read whatever else stands beside it, "S-3 void".
      const word = (isIssue(value) || field === "sample") && own.get(field)?.(cell);
      if (word) testersWord ??= { ...word, field };
      if (word && field !== "sample") continue;
      if (isIssue(value)) (unreadable ??= {})[field] = value;
      else if (value !== undefined) values[field] = value;
    }
    for (const column of blank ? [] : beside) {
      const word = column.says(row[column.index] ?? null);
      if (word && testersWord?.says !== "void") testersWord = { ...word, column: column.index };
    }
  }
  const record = {
    record: index,
    blank,
    values: values as FieldValues,
    unreadable: unreadable ?? NOTHING_UNREADABLE,
  };
  return testersWord ? { ...record, testersWord } : record;
}
