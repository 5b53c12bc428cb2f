import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { isNumber } from "./columns-of-tests";
import { READING_FIELDS, type FieldId } from "./fields";
import { fieldSaidBy, isKnownLabel } from "./labels";
import type { SheetLayout } from "./layout";
import { isNotATestRow } from "./not-a-test-row";
import { recognise } from "./recognise";
import type { KeptColumn } from "./recognition";

/** Fewer fields may be the labels of a form by chance. */
const FIELDS_OF_A_HEADER = 3;
/** So many rows below a header tell whether it is one. */
const ROWS_LOOKED_AT = 200;

/**
 * Whether below the header of a meter reading stands what a table has there: readings, and neither the
 * next label of a form nor another row of labels.
 */
export function isTable({ table, headers }: SheetLayout, kept?: readonly KeptColumn[]): boolean {
  const single = headers.every((each) => each.length === 1);
  // A number is no header of its own: forms number their lines.
  const isNumbered = (at: number) => !/\p{L}/u.test(shownValue(table.headers[at]));
  const texts = headers.map((each, at) => (single && isNumbered(at) ? [""] : each));
  const rows = table.rows.slice(0, ROWS_LOOKED_AT);
  const columns = texts.map((each, at) => ({
    headers: each,
    cells: rows.map((row) => row[at] ?? null),
  }));
  const found = recognise(columns, kept).columns;
  const own = new Set(Object.keys(found) as FieldId[]);
  const readings = READING_FIELDS.flatMap((field) => found[field] ?? []);
  if (readings.length === 0) return false;
  if (rows.every((row) => row.every(isBlank))) return !hasNumber(table.headers);
  if (table.headers.some((_, at) => isOfLabels(rows.map((row) => row[at] ?? null)))) return false;
  const isLabel = (cell: CellValue | undefined) => fieldSaidBy(cell) !== undefined;
  // Two tests with a reading, right below a header without a number, are the rows of a table.
  const first = rows.filter((row) => !row.every(isBlank)).slice(0, 2);
  const isRead = (row: readonly CellValue[]) =>
    readings.some(({ index }) => isNumber(row[index] ?? null)) && !row.some(isKnownLabel);
  if (!hasNumber(table.headers) && first.length === 2 && first.every(isRead)) return true;
  const labelled = readings.some(({ index }) => {
    const below = rows.map((row) => row[index]).filter((cell) => !isBlank(cell));
    return below.some((cell) => isLabel(cell) && !table.headers.includes(cell ?? null));
  });
  // A line of a form that nobody filled in looks like a header; below it stand labels and no readings.
  if (labelled && (hasNumber(table.headers) || !rows.some(isRead))) return false;
  return !rows.some((row) => {
    const filled = row.filter((cell) => !isBlank(cell));
    const others = filled.filter((cell) => {
      const field = fieldSaidBy(cell);
      return field !== undefined && !own.has(field);
    });
    return others.length > 0 && others.length * 2 >= filled.length;
  });
}

/**
 * Whether a header heads rows, and no form, though it has no reading: what names a row there, such as "R1", is no
 * label of a form.
 */
export function headsOtherTests(
  { table, headers }: SheetLayout,
  kept?: readonly KeptColumn[],
): boolean {
  const names = table.headers.map(shownValue);
  const isOfTests = (row: readonly CellValue[]) =>
    !row.every(isBlank) && !isNotATestRow(row, names);
  const rows = table.rows.slice(0, ROWS_LOOKED_AT).filter(isOfTests);
  const cellsOf = (at: number) => rows.map((row) => row[at] ?? null);
  const columns = headers.map((each, at) => ({ headers: each, cells: cellsOf(at) }));
  const found = Object.values(recognise(columns, kept).columns);
  if (found.length < FIELDS_OF_A_HEADER || rows.length < 2 || hasNumber(table.headers))
    return false;
  const isFilled = (row: readonly CellValue[]) =>
    found.every(({ index }) => !isBlank(row[index]) && !isLabelInWords(row[index]));
  return rows.slice(0, 2).every(isFilled) && !rows.some((row) => row.some(isLabelInWords));
}

const isLabelInWords = (cell: CellValue | undefined) =>
  typeof cell === "string" && /\p{L}{3}/u.test(cell) && fieldSaidBy(cell) !== undefined;

/** Whether the cells of a column are the labels of a form: they name a reading and two things besides. */
function isOfLabels(cells: readonly CellValue[]): boolean {
  const labels = cells.filter((cell) => typeof cell === "string" && /\p{L}{3}/u.test(cell));
  const said = new Set(labels.flatMap((cell) => fieldSaidBy(cell) ?? []));
  return said.size >= 3 && READING_FIELDS.some((reading) => said.has(reading));
}

function hasNumber(cells: readonly CellValue[]): boolean {
  return cells.some((cell) => typeof cell === "number");
}
