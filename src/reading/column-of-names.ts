import { isBlank, type CellValue } from "../measure/cell-value";
import type { ColumnPlace, Columns } from "./column-place";
import { kindOf, textOf } from "./evidence";
import { fieldName, READING_FIELDS } from "./fields";
import type { RecognisedColumn } from "./recognition";
import { isSummaryRow } from "./summary-row";
import type { Guard } from "./terms";

type Row = readonly CellValue[];

/** So many rows tell whether a column names the tests. */
const LOOKED_AT = 2000;
/** Fewer tests are told apart by anything. */
const FEWEST_TESTS = 2;

/** A pier, a lot, a technician or a running number may name a test; a supplier or another test's result does not. */
const MAY_NAME: ReadonlySet<Guard> = new Set<Guard>([
  "place",
  "person",
  "running number",
  "other matter",
]);

/**
 * The column by which the tests of a table are called where none is read as that: the first one before the readings
 * that has another text or whole number for every test, "Pier 1", "Pier 2". Nothing hangs on it but what the tests
 * are called.
 */
export function columnOfNames(
  all: readonly RecognisedColumn[],
  columns: Columns,
  rows: readonly Row[],
): ColumnPlace | undefined {
  if (columns.sample || columns.load) return undefined;
  const readings = READING_FIELDS.flatMap((field) => columns[field]?.index ?? []);
  const first = Math.min(...readings);
  const isTest = (row: Row) => readings.some((at) => !isBlank(row[at])) && !isSummaryRow(row);
  const tests = rows.slice(0, LOOKED_AT).filter(isTest);
  if (tests.length < FEWEST_TESTS) return undefined;
  const naming = all.filter((column) => {
    return column.index < first && mayName(column) && namesEach(tests, column);
  });
  // A running number names a test where nothing else does.
  const named =
    naming.find((column) => column.state === "asked" && column.candidates.includes("load")) ??
    naming.find(({ index }) => !countsOn(tests, index)) ??
    naming[0];
  return named && { index: named.index, header: named.header };
}

function mayName(column: RecognisedColumn): boolean {
  if (column.state === "not ours") return MAY_NAME.has(column.guard);
  if (column.state === "asked") return column.candidates.every(isName);
  return column.state === "unknown" && column.mayBe.every(isName);
}

/** Less sure than what any header says. */
const BARELY = 50;

/** What the columns were taken for, with the one among them by which the tests are called. */
export function withColumnOfNames(
  all: readonly RecognisedColumn[],
  named: ColumnPlace | undefined,
): readonly RecognisedColumn[] {
  if (!named) return all;
  const { index, header } = named;
  const because = {
    say: "read-as-name",
    values: { header, field: fieldName("sample") },
  } as const;
  return all.map((column) =>
    column.index === index
      ? { index, header, state: "read", field: "sample", score: BARELY, because }
      : column,
  );
}

const isName = (field: string) => field === "sample" || field === "load";

/** A row of means below has no name. */
const MOST_WITHOUT = 1;

function namesEach(tests: readonly Row[], { index, state }: RecognisedColumn): boolean {
  const names = new Set<string>();
  let without = 0;
  for (const row of tests) {
    const cell = row[index] ?? null;
    if (isBlank(cell) && tests.length > FEWEST_TESTS && ++without <= MOST_WITHOUT) continue;
    if (isBlank(cell) || (typeof cell !== "string" && !Number.isInteger(cell))) return false;
    const text = textOf(cell);
    const kind = kindOf(cell, text);
    // The number of a ticket may be that of a day.
    const isOther = kind === "clock" || kind === "yesNo" || (kind === "date" && state !== "asked");
    if (names.has(text) || isOther) return false;
    names.add(text);
  }
  return true;
}

function countsOn(tests: readonly Row[], index: number): boolean {
  const numbers = tests.map((row) => Number(row[index]));
  return numbers.every((number, at) => at === 0 || number === numbers[at - 1]! + 1);
}
