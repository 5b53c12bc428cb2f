import { shown } from "./custom-functions-runtime";
import { expectAsPrinted, type Worked } from "../check-values/worked";

type WorksheetFunction = (...given: any[][][]) => unknown[][];

/** What a worksheet function shows for arguments of one cell each. */
export function inOneCell(run: WorksheetFunction, given: readonly unknown[]): unknown {
  return shown(() => run(...given.map((value) => [[value]])));
}

/** Checks a worksheet function on worked examples, one by one and spilled down a column. */
export function checkWorked(name: string, run: WorksheetFunction, rows: readonly Worked[]): void {
  test.each(rows)(`FRESH.${name} of %j gives %s (%s)`, (given, printed) => {
    expectAsPrinted(inOneCell(run, given), printed);
  });

  test(`FRESH.${name} spills down a column, and a blank row stays blank`, () => {
    const wide = Math.max(...rows.map(([given]) => given.length));
    const columns = Array.from({ length: wide }, (_, i) => [
      ...rows.map(([given]) => [given[i] ?? null]),
      [null],
    ]);
    const cells = shown(() => run(...columns)) as unknown[][];
    rows.forEach(([, printed], row) => expectAsPrinted(cells[row]![0], printed));
    expect(cells[rows.length]).toEqual([""]);
  });
}

/** Checks the sentence that a worksheet function gives for an input that cannot be. */
export function checkRefused(
  name: string,
  run: WorksheetFunction,
  rows: readonly (readonly [given: readonly unknown[], sentence: RegExp])[],
): void {
  test.each(rows)(`FRESH.${name} of %j is refused: %s`, (given, sentence) => {
    expect(inOneCell(run, given)).toMatch(sentence);
  });
}
