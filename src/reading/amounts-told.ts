import { isBlank, type CellValue } from "../measure/cell-value";
import { numberFromCell } from "../measure/number-from-cell";
import { amountsIn, type AmountField } from "./amount-in-words";
import type { Cells } from "./labelled-value";
import type { SheetReading } from "./sheet-reading";
import type { TestsNamed } from "./tests-named";
import { askedOfTests, type UnreadColumn } from "./unread-column";

/** Where the tests stand and what they have of their own. */
export interface TestsWithAmounts {
  readonly has: SheetReading["has"];
  /** What stands in the cell of a field. */
  readonly cell: SheetReading["cell"];
  readonly isTest: (row: number) => boolean;
  /** The tests that a text names. */
  readonly namedTests?: (text: string) => TestsNamed;
}

/** What one column tells. */
interface ToldInColumn {
  readonly first: number;
  readonly own: Set<number>;
  readonly ofAll: Set<AmountField>;
}

/** Looks at the rows of a table from one to before another, and says in the end what they told. */
export interface AmountsInTable {
  look(from: number, to: number): void;
  told(): readonly UnreadColumn[];
}

/**
 * Amounts that change the air and are told in words beside the tests of a table or below them, where no cell of the
 * test holds them: "1.4 L of alcohol" in a column of remarks. One for each column.
 *
 * @param inNumbers Positions of the columns that are read for what stands in them and tell no amount.
 */
export function amountsInTable(
  rows: Cells,
  inNumbers: readonly number[],
  tests: TestsWithAmounts,
  headerRow: number,
): AmountsInTable {
  const { isTest } = tests;
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const every = Array.from({ length: width }, (_, column) => column);
  const inWords = every.filter((column) => !inNumbers.includes(column));
  const found = new Map<number, ToldInColumn>();
  return {
    look(from, to) {
      for (let row = from; row < to; row++) {
        const isOfATest = isTest(row);
        for (const column of isOfATest ? inWords : every) {
          const text = rows[row]![column];
          const named = isOfATest ? [row] : namedIn(text, tests);
          const ofAll = named.length > 0 ? [] : toldIn(text, tests, undefined);
          const own = named.filter((each) => toldIn(text, tests, each, isOfATest).length > 0);
          if (ofAll.length + own.length === 0) continue;
          const told = found.get(column) ?? { first: row, own: new Set(), ofAll: new Set() };
          found.set(column, told);
          for (const each of own) told.own.add(each);
          for (const field of ofAll) told.ofAll.add(field);
        }
      }
    },
    told() {
      const columns = [...found].sort(([one], [other]) => one - other);
      return columns.map(([column, { first, own, ofAll }]) => {
        const header = String(rows[first]![column]);
        const at = { index: column, place: { row: headerRow + 1 + first, column }, header };
        const touches = (row: number) => own.has(row) || touchesAll(row, [...ofAll], tests);
        return askedOfTests("amount-told", at, touches);
      });
    },
  };
}

/** The same of what stands above a table: it is told of all of its tests. */
export function withAmountsToldAbove(read: SheetReading, head: Cells, from: number): SheetReading {
  const labels = new Set(
    read.unread.flatMap(({ place }) => (place ? [`${place.row},${place.column}`] : [])),
  );
  const isTest = (record: number) => read.records[record]?.blank === false;
  const tests = { has: read.has, cell: read.cell, isTest };
  const told = [...head.entries()].flatMap(([row, cells]) =>
    [...cells.entries()].flatMap(([column, cell]) => {
      if (isBlank(cell) || labels.has(`${from + row},${column}`)) return [];
      const fields = toldIn(cell, tests, undefined);
      if (fields.length === 0) return [];
      const at = { index: column, place: { row: from + row, column }, header: String(cell) };
      return [askedOfTests("amount-told", at, (record) => touchesAll(record, fields, tests))];
    }),
  );
  return told.length === 0 ? read : { ...read, unread: [...read.unread, ...told] };
}

/**
 * What a text tells an amount of that no cell holds. A blank or a 0 among the cups of a column counts as none, unless
 * a remark beside it says otherwise.
 */
function toldIn(
  cell: CellValue | undefined,
  { has, cell: cellOf }: TestsWithAmounts,
  test: number | undefined,
  isBeside = test !== undefined,
): readonly AmountField[] {
  const fields = amountsIn(cell, isBeside);
  return fields.filter((field) => {
    if (!has(field)) return true;
    return test === undefined ? field === "alcohol" : isNothing(cellOf(test, field));
  });
}

/** The tests that a line names in which an amount may be told. */
function namedIn(text: CellValue | undefined, { namedTests }: TestsWithAmounts): readonly number[] {
  if (typeof text !== "string" || !namedTests || amountsIn(text, false).length === 0) return [];
  return [...namedTests(text).rows];
}

function touchesAll(
  row: number,
  fields: readonly AmountField[],
  { has, cell, isTest }: TestsWithAmounts,
): boolean {
  return isTest(row) && fields.some((field) => !has(field) || isNothing(cell(row, field)));
}

const isNothing = (cell: CellValue) => isBlank(cell) || numberFromCell(cell) === 0;
