import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import type { Columns } from "./column-place";
import { FIELDS, READING_FIELDS, type FieldId } from "./fields";
import { plainly } from "./kept-columns";
import { orderColumn } from "./order-of-readings";
import { recognise } from "./recognise";
import type { KeptColumn } from "./recognition";
import { CELLS_LOOKED_AT, sheetColumns } from "./sheet-columns";
import { rowsOfOneName, rowsThatFollow, type RowsOfTests } from "./rows-of-tests";
import type { SheetTable } from "./sheet-table";

type Row = readonly CellValue[];

const ORDER = ["first", "second", "third"] as const;
/** What stands once for a test, though each of its readings has a time of its own. */
const OF_EACH_READING: ReadonlySet<string> = new Set(["date", "minute-of-day"]);

/** What the column that counts the readings may be taken for by its header. */
const MAY_COUNT: ReadonlySet<FieldId> = new Set<FieldId>([...READING_FIELDS, "roll", "sample"]);
const NOTHING_THERE = { headers: [""], cells: [] };

/** A table in which every row holds one reading, put together to one test a row. */
export interface PutTogether {
  /** Each test in the row of its first reading, the rows of the others empty; two columns more for these. */
  readonly table: SheetTable;
  /** What the columns of the readings are. */
  readonly kept: readonly KeptColumn[];
  readonly isOpen: false;
  /** The column that counts the readings, and the one that holds them. */
  readonly order: number;
  readonly reading: number;
  /** By test and column, how many rows below the first reading a value stands; above, where the sheet was sorted. */
  readonly below: ReadonlyMap<number, readonly number[]>;
  /** The first row of the test to which a further row belongs. */
  readonly firstOf: ReadonlyMap<number, number>;
}

/** Rows that hold one reading each, of which it cannot be told which belong together. */
export interface LeftOpen {
  readonly isOpen: true;
  readonly order: number;
  readonly asks: "rows-of-readings" | "rows-may-be-readings";
}

/**
 * Puts the readings of a test together where they stand below each other, one a row: a column counts them
 * anew for each test, another holds them, and the rows of a test have one name.
 *
 * @param kept What the user has said of columns: nothing is put together against it.
 * @returns That it is open where a sheet was sorted and a name has a reading twice; `undefined` where every row is
 *   a test, as in most tables.
 */
export function readingsInRows(
  table: SheetTable,
  kept: readonly KeptColumn[],
): PutTogether | LeftOpen | undefined {
  const { headers, rows } = table;
  const found = orderColumn(headers, rows);
  if (found === undefined) return undefined;
  const order = found.at;
  const header = (at: number) => plainly(shownValue(headers[at]));
  if (kept.some((each) => plainly(each.header) === header(order))) return undefined;
  const all = sheetColumns(table);
  // Two meters are numbered too, "M-1" and "M-2", and the samples of a load, "1st" and "2nd".
  const itself = recognise(all, kept).all[order]!;
  if (itself.state === "read" && !MAY_COUNT.has(itself.field)) return undefined;
  const mayBeName = itself.state === "read" && itself.field === "sample";
  if (mayBeName && !found.byHeader) return undefined;
  const others = all.map((column, at) => (at === order ? NOTHING_THERE : column));
  const { columns } = recognise(others, kept);
  const readings = READING_FIELDS.flatMap((field) => columns[field] ?? []);
  const only = columns.final ?? columns.first;
  const name = (columns.sample ?? columns.load)?.index;
  if (only === undefined || readings.length > 1 || name === undefined) return undefined;
  const tests = (found.inTurn ? rowsThatFollow : rowsOfOneName)(rows, order, name);
  if (!tests) return { order, isOpen: true, asks: "rows-of-readings" };
  // Where names change from reading to reading, they are of readings and not of tests.
  const first = tests.filter(([row]) => row! < CELLS_LOOKED_AT);
  if (!first.some((test) => test.length > 1)) return undefined;
  if (found.isOpen) return { order, isOpen: true, asks: "rows-may-be-readings" };
  const reading = only.index;
  const named = ORDER.map((_, i) => `${shownValue(headers[reading])} ${i + 1}`);
  const keptOthers = kept.filter((each) => plainly(each.header) !== header(reading));
  return {
    ...{ order, reading, isOpen: false },
    ...joined({ ...table, headers: withReadings(headers, named, order, reading) }, tests, {
      ...{ order, reading, columns },
    }),
    firstOf: new Map(tests.flatMap(([top, ...more]) => more.map((row) => [row, top!] as const))),
    kept: [...keptOthers, ...ORDER.map((field, i) => ({ header: named[i]!, field }))],
  };
}

function withReadings(headers: Row, named: readonly string[], order: number, reading: number): Row {
  const own = headers.map((header, at) =>
    at === order ? null : at === reading ? named[0]! : header,
  );
  return [...own, ...named.slice(1)];
}

interface Where {
  readonly order: number;
  readonly reading: number;
  readonly columns: Columns;
}

function joined(
  { headers, titles, rows }: SheetTable,
  tests: RowsOfTests,
  { order, reading, columns }: Where,
): Pick<PutTogether, "table" | "below"> {
  const width = headers.length - 2;
  const empty: Row = headers.map(() => null);
  const fieldAt = new Map(
    (Object.keys(columns) as FieldId[]).map((field) => [columns[field]!.index, field]),
  );
  const all: Row[] = rows.map(() => empty);
  const below = new Map<number, readonly number[]>();
  for (const test of tests) {
    const [top] = test as [number];
    const cells: CellValue[] = [...empty];
    const places: number[] = headers.map(() => 0);
    const put = (at: number, [value, from]: Found) => {
      cells[at] = value;
      places[at] = from - top;
    };
    for (let at = 0; at < width; at++) {
      if (at !== order && at !== reading) put(at, oneOf(test, rows, at, fieldAt.get(at)));
    }
    put(reading, [rows[top]![reading] ?? null, top]);
    if (test.length > 1) put(width, [rows[test[1]!]![reading] ?? null, test[1]!]);
    if (test.length > 2) put(width + 1, oneOf(test.slice(2), rows, reading, "third"));
    all[top] = cells;
    if (places.some((place) => place !== 0)) below.set(top, places);
  }
  const more = titles && [...titles, ...headers.slice(width).map((each) => [shownValue(each)])];
  const own = more?.map((each, at) => [...each.slice(0, -1), shownValue(headers[at])]);
  return { table: { headers, titles: own, rows: all }, below };
}

type Found = readonly [value: CellValue, row: number];

/** What the rows of a test say in a column: one thing, or all that differs in one text that nobody takes for a value. */
function oneOf(
  test: readonly number[],
  rows: SheetTable["rows"],
  at: number,
  field: FieldId | undefined,
): Found {
  const filled = test.filter((row) => !isBlank(rows[row]![at]));
  const [first] = filled;
  if (first === undefined) return [null, test[0]!];
  const texts = [...new Set(filled.map((row) => shownValue(rows[row]![at])))];
  const isOne = texts.length === 1 || (field && OF_EACH_READING.has(FIELDS[field].kind));
  if (isOne) return [rows[first]![at]!, first];
  return [texts.join(field ? " | " : "; "), first];
}
