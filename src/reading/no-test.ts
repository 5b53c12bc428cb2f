import { isBlank, type CellValue } from "../measure/cell-value";
import type { ColumnPlace } from "./column-place";
import { kindOf, textOf } from "./evidence";
import { FIELDS, type FieldId } from "./fields";
import { isNotATestRow, repeatsTitles } from "./not-a-test-row";

type Row = readonly CellValue[];
type Places = readonly (readonly [FieldId, ColumnPlace])[];

/** What is known of a table when its rows are looked at. */
export interface TableOfTests {
  readonly rows: readonly Row[];
  readonly places: Places;
  readonly headers: readonly string[];
  readonly titles: readonly (readonly string[])[] | undefined;
  /** Whether a row is a sentence and no test. */
  readonly isSentence: (row: Row) => boolean;
}

/** Whether a row holds no test: every cell of a field is blank, or it is a sum, a header or a remark. */
export function isNoTest(
  at: number,
  { rows, places, headers, titles, isSentence }: TableOfTests,
): boolean {
  const row = rows[at]!;
  return (
    places.every(([, { index }]) => isBlank(row[index])) ||
    isNotATestRow(row, headers) ||
    (titles !== undefined && repeatsTitles(row, titles)) ||
    isSentence(row) ||
    isDayOfTheRowsBelow(row, rows[at + 1], places)
  );
}

/**
 * Whether a row is nothing but a day, the title of the tests below it: in a column of something else, or in
 * that of the days where the row below has none of its own.
 */
function isDayOfTheRowsBelow(row: Row, below: Row | undefined, places: Places): boolean {
  const at = row.findIndex((cell) => !isBlank(cell));
  const cell = row[at] ?? null;
  if (row.some((other, column) => column > at && !isBlank(other))) return false;
  const isOfDays = places.some(
    ([field, { index }]) => index === at && FIELDS[field].kind === "date",
  );
  const isTitle = !isOfDays || (below?.some((each) => !isBlank(each)) && isBlank(below[at]));
  return isTitle === true && kindOf(cell, textOf(cell)) === "date";
}
