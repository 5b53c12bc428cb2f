import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { orderSaidBy } from "./order-of-readings";
import type { SheetTable } from "./sheet-table";

type Rows = SheetTable["rows"];

/** The rows of each test, in the order of its readings; a row that holds none is for itself. */
export type RowsOfTests = readonly (readonly number[])[];

/** The rows of each test where its readings follow each other; blank rows between them change nothing. */
export function rowsThatFollow(rows: Rows, order: number, name: number): RowsOfTests {
  const tests: number[][] = [];
  let test: number[] = [];
  let before: { readonly order: number; readonly name: CellValue } | undefined;
  rows.forEach((row, at) => {
    const is = orderSaidBy(row[order]);
    const own = row[name] ?? null;
    if (is === undefined && row.every(isBlank)) {
      tests.push([at]);
      return;
    }
    const goesOn = before !== undefined && is === before.order + 1 && !isBlank(before.name);
    const isSame = goesOn && (isBlank(own) || shownValue(own) === shownValue(before!.name));
    if (isSame) test.push(at);
    else tests.push((test = [at]));
    before = is === undefined ? undefined : { order: is, name: isSame ? before!.name : own };
  });
  return tests;
}

/**
 * The rows of each test by its name, wherever they stand, as in a sheet that was sorted.
 *
 * @returns `undefined` where a further reading has no name, or a name a reading twice or not: a second test
 *   may bear it. Where every name stands once, each row is a test.
 */
export function rowsOfOneName(rows: Rows, order: number, name: number): RowsOfTests | undefined {
  const tests = new Map<string, number[]>();
  const others: number[][] = [];
  for (const [at, row] of rows.entries()) {
    const is = orderSaidBy(row[order]);
    const isNamed = !isBlank(row[name]);
    if (is === undefined || (is === 1 && !isNamed)) {
      others.push([at]);
      continue;
    }
    if (!isNamed) return undefined;
    const named = shownValue(row[name]);
    const test = tests.get(named) ?? [];
    if (test[is - 1] !== undefined) return undefined;
    test[is - 1] = at;
    tests.set(named, test);
  }
  // A place that was left free in an array is not there for `every`, but for a copy.
  const all = [...tests.values()].map((test) => [...test]);
  const rowsIn = (test: readonly (number | undefined)[]) =>
    test.filter((row): row is number => row !== undefined);
  if (all.every((test) => rowsIn(test).length === 1)) return rows.map((_, at) => [at]);
  return all.every((test) => rowsIn(test).length === test.length) ? [...all, ...others] : undefined;
}
