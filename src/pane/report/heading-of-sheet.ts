import { isBlank, quoted, shownValue, type CellValue } from "../../measure/cell-value";
import { dateFromCell } from "../../measure/date";
import { writtenDay } from "../../measure/spreadsheet-day";
import { isIssue } from "../../measure/issue";
import type { DecimalMark } from "../../measure/number-from-cell";
import type { TestResult } from "../../fieldsheet/test-result";
import { say } from "../../messages/pane-catalogue";
import { typedText } from "../kit/shown-number";
import type { CheckedArea } from "../state/checked-area";
import { HEADING_FIELDS, headingFieldOf, type HeadingField } from "./heading-words";

/** What the sheet itself says for the head of a report; what it does not say is absent. */
export type HeadingOfSheet = Readonly<Partial<Record<HeadingField, string>>>;

type Cells = readonly (readonly CellValue[])[];

/** A label stands so many columns before its value at most. */
const WIDEST_LABEL = 4;
/** So many different values are listed; of more their number is told. */
const MOST_LISTED = 6;
/** More than this is a sentence, not a label. */
const LONGEST_LABEL = 40;

/**
 * Takes what stands at the head of a report from the sheet: first from what is recorded of each of the
 * tests, then from the labels above and among them.
 *
 * @param tests The tests that the report is of.
 * @param above Cells of the sheet above what was checked.
 */
export function headingOfSheet(
  checked: CheckedArea,
  tests: readonly TestResult[],
  above: Cells,
): HeadingOfSheet {
  const { read, headerRow, result } = checked;
  const among = result.reading.forms === undefined ? read.values.slice(0, headerRow) : read.values;
  const labelled = valuesOfLabels([...above, ...among]);
  return Object.fromEntries(
    HEADING_FIELDS.flatMap((field) => {
      const read = listed(fromFields(field, tests, checked.decimal));
      const told = listed(fromColumn(field, tests, checked)) ?? shown(field, labelled.get(field));
      // Which specification it is and the limits that the tests were held against are two things.
      const value = field === "specification" ? both(told, read) : (read ?? told);
      return value === undefined ? [] : [[field, value]];
    }),
  );
}

function both(one: string | undefined, other: string | undefined): string | undefined {
  return one === undefined || other === undefined ? (one ?? other) : `${one}; ${other}`;
}

/** What the check read of the tests. */
function fromFields(
  field: HeadingField,
  tests: readonly TestResult[],
  decimal: DecimalMark,
): string[] {
  return tests.flatMap(({ values, limits }) => {
    if (field === "date" && values.date !== undefined) return [writtenDay(values.date)];
    if (field === "mix" && values.mix) return [values.mix];
    if (field === "meter" && values.meter) return [values.meter];
    if (field === "meterCheck" && values.meterCheck !== undefined)
      return [writtenDay(values.meterCheck)];
    if (field === "specification") return limitsShown(limits, decimal) || [];
    return [];
  });
}

/** Limits of air as a report shows them; "" for none. */
export function limitsShown({ low, high }: TestResult["limits"], decimal: DecimalMark): string {
  const [from, to] = [typedText(low, decimal), typedText(high, decimal)];
  if (low === undefined) return high === undefined ? "" : say("report-limit-high", { high: to });
  return high === undefined
    ? say("report-limit-low", { low: from })
    : say("report-limits", { low: from, high: to });
}

/** What a column holds that says nothing about the test itself, such as who made it. */
function fromColumn(
  field: HeadingField,
  tests: readonly TestResult[],
  { table, result }: CheckedArea,
): string[] {
  const taken = new Set(Object.values(result.columns).map(({ index }) => index));
  const column = table.headers.findIndex(
    (header, i) => !taken.has(i) && headingFieldOf(shownValue(header)) === field,
  );
  if (column < 0) return [];
  return tests.flatMap(({ record }) => shown(field, table.rows[record]?.[column]) ?? []);
}

/** The values behind labels: in the same cell after a colon, or in one of the next cells of the row. */
function valuesOfLabels(cells: Cells): ReadonlyMap<HeadingField, CellValue> {
  const found = new Map<HeadingField, CellValue>();
  const keep = (field: HeadingField, value: CellValue) => {
    if (!found.has(field) && !isBlank(value)) found.set(field, value);
  };
  for (const row of cells) {
    row.forEach((cell, column) => {
      if (typeof cell !== "string") return;
      const [before, ...after] = cell.split(":");
      if (before!.length > LONGEST_LABEL) return;
      const field = headingFieldOf(before!);
      if (!field) return;
      const behind = after.join(":").trim();
      keep(field, behind === "" ? besideLabel(row, column) : behind);
    });
  }
  return found;
}

/** The next filled cell, unless it is a label itself: then nothing was written behind this one. */
function besideLabel(row: readonly CellValue[], column: number): CellValue {
  const next = row.slice(column + 1, column + 1 + WIDEST_LABEL).find((cell) => !isBlank(cell));
  if (next === undefined) return null;
  const isLabel = typeof next === "string" && (headingFieldOf(next) || /:\s*$/.test(next));
  return isLabel ? null : next;
}

function shown(field: HeadingField, value: CellValue | undefined): string | undefined {
  if (value === undefined || isBlank(value)) return undefined;
  if (field === "date" || field === "meterCheck") {
    const day = dateFromCell(value);
    if (day !== undefined && !isIssue(day)) return writtenDay(day);
  }
  return quoted(value).trim();
}

/** Different values in their order; `undefined` for none. */
function listed(values: readonly string[]): string | undefined {
  const different = [...new Set(values.map((value) => value.trim()))];
  if (different.length === 0) return undefined;
  if (different.length <= MOST_LISTED) return different.join(", ");
  const more = different.length - MOST_LISTED;
  return say("report-and-more", { listed: different.slice(0, MOST_LISTED).join(", "), more });
}
