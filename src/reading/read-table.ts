import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { issue } from "../measure/issue";
import type { DecimalMark } from "../measure/number-from-cell";
import type { ColumnPlace, Columns } from "./column-place";
import { columnOfNames, withColumnOfNames } from "./column-of-names";
import { columnsApart } from "./columns-apart";
import { amountsInTable } from "./amounts-told";
import { columnReader, isWrittenInNumbers, type WrittenIn } from "./column-reader";
import { decimalOfSheet } from "./decimal-of-column";
import { FIELDS, READING_FIELDS, type FieldId } from "./fields";
import { harmlessAs } from "./harmless";
import { rowHeadedAgain, withTitlesAbove } from "./headed-again";
import { mayBeByPressure } from "./may-be-by-pressure";
import { rowThatMaySumUp } from "./may-sum-up";
import { ReadTests } from "./read-tests";
import type { FieldRecord } from "./record";
import { namesOnce, rowsOfWords, sentencesAmong } from "./rows-of-words";
import { sheetColumns } from "./sheet-columns";
import type { SheetReading } from "./sheet-reading";
import type { SheetTable } from "./sheet-table";
import type { UnreadColumn } from "./unread-column";
import { unfitSettings } from "./kept-columns";
import { isNoTest } from "./no-test";
import { asItStands, withRowsLeftOpen } from "./readings-as-they-stand";
import { readingsInOneCell } from "./readings-in-one-cell";
import { withReadingsInOneColumn } from "./readings-in-one-column";
import { readingsInRows } from "./readings-in-rows";
import { recognise } from "./recognise";
import type { KeptColumn, RecognisedColumn, SheetColumn } from "./recognition";
import { inOneGo, type Steps } from "./steps";
import { wordsBeside } from "./testers-words";

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

/** In the place of a column that is none of the table's. */
const BLANK_COLUMN: SheetColumn = { headers: [""], cells: [] };
/** Few enough rows to take some thousandths of a second. */
const ROWS_IN_A_STEP = 5000;

/**
 * Reads a table of tests, column by column and in steps, each of which yields the share that is done. A
 * row that sums up others holds no test, like a blank one.
 *
 * @param table Headers and rows as they stand in the sheet.
 */
export function* readTableInSteps(
  table: SheetTable,
  options: ReadingOptions = {},
): Steps<SheetReading> {
  const together = readingsInRows(table, options.kept ?? []);
  if (!together || together.isOpen) {
    const inOne = together ? undefined : readingsInOneCell(table, options.kept ?? []);
    if (inOne) {
      const read = yield* readRowsInSteps(inOne.table, { ...options, kept: inOne.kept });
      return withReadingsInOneColumn(read, inOne.reading, table);
    }
    const read = yield* readRowsInSteps(table, options);
    return together ? withRowsLeftOpen(read, together, table) : read;
  }
  const read = yield* readRowsInSteps(together.table, { ...options, kept: together.kept });
  return asItStands(read, together, table);
}

/** The same where every row holds a whole test. */
function* readRowsInSteps(
  table: SheetTable,
  { decimal = ".", datesFrom, headerRow = 0, kept = [] }: ReadingOptions,
): Steps<SheetReading> {
  const again = rowHeadedAgain(table.headers, table.rows);
  const rows = again < 0 ? table.rows : withoutBelow(table.rows, again);
  const every = sheetColumns({ ...table, rows });
  const apart = columnsApart(every, rows, kept);
  const isApart = (index: number) => apart.some(({ from, to }) => index >= from && index <= to);
  const own = every.map((column, index) => (isApart(index) ? BLANK_COLUMN : column));
  const { columns: found, all } = recognise(own, kept);
  const headed = table.titles ? withTitles(found, table.headers) : found;
  const named = columnOfNames(all, headed, rows);
  const columns = named ? { ...headed, sample: named } : headed;
  const headers = own.map(({ headers }) => headers.at(-1) ?? "");
  const titles = table.titles && own.map(({ headers }) => headers.slice(0, -1));
  const places = Object.entries(columns) as [FieldId, ColumnPlace][];
  // A title alone in a column that only names the tests is none.
  const ofTests = named ? places.filter(([, { index }]) => index !== named.index) : places;
  const naming = [columns.sample, columns.load].flatMap((column) => (column ? [column.index] : []));
  const isSentence = sentencesAmong(rows, naming);
  const tableOfTests = { rows, places: ofTests, headers, titles, isSentence };
  const blank: boolean[] = [];
  const tests = new ReadTests(blank);
  const records: FieldRecord[] = [];
  const written: WrittenIn = {
    decimal,
    datesFrom,
    decimalOfSheet: () => (ofSheet ??= { is: decimalOfSheet(cellsOf(places, rows)) }).is,
  };
  let ofSheet: { is?: DecimalMark } | undefined;
  const has = (field: FieldId) => columns[field] !== undefined;
  const isTest = (row: number) => !blank[row];
  const cell = (row: number, field: FieldId) =>
    table.rows[row]?.[columns[field]?.index ?? -1] ?? null;
  const inNumbers = places.flatMap(([field, { index }]) =>
    FIELDS[field].kind === "text" ? [] : [index],
  );
  const namedTests = namesOnce(function* () {
    for (const row of rows.keys())
      for (const column of naming) if (isTest(row)) yield [row, shownValue(rows[row]![column])];
  });
  const amounts = amountsInTable(rows, inNumbers, { has, cell, isTest, namedTests }, headerRow);
  const parts: (() => ReadStretch)[] = [
    () => (from, to) => {
      for (let row = from; row < to; row++) blank.push(isNoTest(row, tableOfTests));
    },
    ...places.map(([field, place]) => () => {
      return columnReader(field, place, columns, rows, tests, written);
    }),
    () =>
      wordsBeside(
        all.filter(({ index }) => !isApart(index)),
        rows,
        tests,
      ),
    () => sumLeftOpen(rows, columns, tests),
    () => (from, to) => amounts.look(from, to),
    () => (from, to) => {
      for (let row = from; row < to; row++) records.push(tests.at(row));
    },
  ];
  for (const [i, begin] of parts.entries()) {
    const read = begin();
    for (let from = 0; from < rows.length; from += ROWS_IN_A_STEP) {
      read(from, Math.min(from + ROWS_IN_A_STEP, rows.length));
      yield (i + from / rows.length) / parts.length;
    }
  }
  const unread = unreadColumns(all, rows).filter(({ index }) => index !== named?.index);
  return {
    decimal,
    columns,
    records,
    recognised: withColumnOfNames(all, named),
    unfit: unfitSettings(own, kept),
    unread: [
      ...unread,
      ...mayBeByPressure(columns, records, unread),
      ...rowsOfWords(rows, isTest, namedTests, headerRow),
      ...amounts.told(),
    ],
    apart: apart.map((run) => ({
      ...run,
      first: every[run.from]!.headers.at(-1) ?? "",
      last: every[run.to]!.headers.at(-1) ?? "",
    })),
    ...(again >= 0 && { headedAgain: { record: again, ...headerIn(table.rows[again]!) } }),
    has,
    cell,
    placeOf: (row, field) => ({
      row: headerRow + (row === null ? 0 : row + 1),
      column: (field !== null && columns[field]?.index) || 0,
    }),
  };
}

const NOTHING: readonly CellValue[] = [];

/** The rows of a table with nothing in those of the table that begins below it: they say nothing of this one. */
function withoutBelow(rows: SheetTable["rows"], again: number): SheetTable["rows"] {
  const end = withTitlesAbove(rows, again);
  return rows.map((row, at) => (at < end ? row : NOTHING));
}

/** The first header of a row, and its column. */
function headerIn(headers: readonly CellValue[]): {
  readonly column: number;
  readonly header: string;
} {
  const column = headers.findIndex((cell) => !isBlank(cell));
  return { column, header: shownValue(headers[column]) };
}

/** Reads from one row to before another. */
type ReadStretch = (from: number, to: number) => void;

/** The same in one go. */
export function readTable(table: SheetTable, options?: ReadingOptions): SheetReading {
  return inOneGo(readTableInSteps(table, options));
}

/** The columns of the fields that are written in numbers. */
function* cellsOf(
  places: readonly (readonly [FieldId, ColumnPlace])[],
  rows: SheetTable["rows"],
): Generator<readonly CellValue[]> {
  for (const [field, { index }] of places)
    if (isWrittenInNumbers(field)) yield rows.map((row) => row[index] ?? null);
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
    const mayBe = column.state === "asked" ? column.candidates : column.mayBe;
    const holds = (row: number) => !isBlank(rows[row]?.[index]);
    if (!rows.some((_, row) => holds(row))) return [];
    const isHarmless = harmlessAs(mayBe, header);
    const touches = (row: number) => holds(row) && !isHarmless(rows[row]![index]!);
    return [{ index, header, because, decides, mayBe, touches, holds }];
  });
}

/** A row that may be a total is not taken for a test, nor left out: its reading is not read. */
function sumLeftOpen(rows: SheetTable["rows"], columns: Columns, tests: ReadTests): ReadStretch {
  return (_, to) => {
    const field = READING_FIELDS.find((each) => columns[each]);
    const row = to === rows.length ? rowThatMaySumUp(rows, columns, tests.blank) : undefined;
    if (row === undefined || field === undefined) return;
    tests.column(field)[row] = undefined;
    tests.cannotRead(row, field, issue("may-sum-up"));
  };
}
