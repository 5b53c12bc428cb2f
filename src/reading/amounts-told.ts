import { isBlank, type CellValue } from "../measure/cell-value";
import { numberFromCell } from "../measure/number-from-cell";
import { amountsIn, type AmountField } from "./amount-in-words";
import type { Cells } from "./labelled-value";
import type { SheetReading } from "./sheet-reading";
import { askedOfTests, type UnreadColumn } from "./unread-column";

/** Where the tests stand and what they have of their own. */
export interface TestsWithAmounts {
  readonly has: SheetReading["has"];
  /** What stands in the cell of a field. */
  readonly cell: SheetReading["cell"];
  readonly isTest: (row: number) => boolean;
}

/**
 * Amounts that change the air and are told in words beside the tests of a table or below them, where no cell of the
 * test holds them: "1.4 L of alcohol" in a column of remarks. One for each column.
 *
 * @param inNumbers Positions of the columns that are read for what stands in them and told no amount.
 */
export function amountsTold(
  rows: Cells,
  inNumbers: readonly number[],
  tests: TestsWithAmounts,
  headerRow: number,
): UnreadColumn[] {
  const { isTest } = tests;
  const columns = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const told: UnreadColumn[] = [];
  for (let column = 0; column < columns; column++) {
    const isRead = inNumbers.includes(column);
    const own = new Set<number>();
    const ofAll = new Set<AmountField>();
    let first: number | undefined;
    for (const [row, cells] of rows.entries()) {
      const isOfATest = isTest(row);
      if (isOfATest && isRead) continue;
      const fields = toldIn(cells[column], tests, isOfATest ? row : undefined);
      if (fields.length === 0) continue;
      first ??= row;
      if (isOfATest) own.add(row);
      else for (const field of fields) ofAll.add(field);
    }
    if (first === undefined) continue;
    const header = String(rows[first]![column]);
    const at = { index: column, place: { row: headerRow + 1 + first, column }, header };
    const touches = (row: number) => own.has(row) || touchesAll(row, [...ofAll], tests);
    told.push(askedOfTests("amount-told", at, touches));
  }
  return told;
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
): readonly AmountField[] {
  const fields = amountsIn(cell, test !== undefined);
  return fields.filter((field) => {
    if (!has(field)) return true;
    return test === undefined ? field === "alcohol" : isNothing(cellOf(test, field));
  });
}

function touchesAll(
  row: number,
  fields: readonly AmountField[],
  { has, cell, isTest }: TestsWithAmounts,
): boolean {
  return isTest(row) && fields.some((field) => !has(field) || isNothing(cell(row, field)));
}

const isNothing = (cell: CellValue) => isBlank(cell) || numberFromCell(cell) === 0;
