import { isBlank, type CellValue } from "../measure/cell-value";
import { isIssue } from "../measure/issue";
import type { DecimalMark } from "../measure/number-from-cell";
import { airSpecificationFromCell } from "./air-in-percent";
import type { BlockPlace } from "./block-place";
import type { ColumnPlace } from "./column-place";
import type { FieldId } from "./fields";
import { asOneTest } from "./find-forms";
import type { Cells } from "./labelled-value";
import { fieldSaidBy, isLabelText } from "./labels";
import { limitsInLine } from "./limits-in-a-line";
import { readTable, type ReadingOptions } from "./read-table";
import type { SheetReading } from "./sheet-reading";
import type { Term } from "./terms";
import { languagesOf, understand } from "./words-in-header";

/** Rows above or below a table, and where the first of them stands in the block. */
export interface RowsBesideTests {
  readonly rows: Cells;
  readonly from: number;
}

/** A value that stands once with its label. */
interface ValueSaidOnce {
  readonly field: FieldId;
  readonly header: string;
  readonly place: BlockPlace;
  readonly cell: CellValue;
  readonly value: unknown;
  /** As if it were a column; it has no place among those of the table. */
  readonly column: ColumnPlace;
}

/** A value that cannot be read as what its label says, or may be one of several things. */
interface OpenOnce {
  readonly fields: readonly FieldId[];
  readonly header: string;
  readonly place: BlockPlace;
}

/** What stands once for a table and holds for every test in it. */
export interface SaidOnce {
  readonly said: readonly ValueSaidOnce[];
  readonly open: readonly OpenOnce[];
}

export const AIR_LIMITS: ReadonlySet<FieldId> = new Set<FieldId>([
  ...(["low", "high", "target", "tolerance"] as const),
]);

/** What a mix has: it holds for the tests of the mix that is named with it. */
export const OF_A_MIX: ReadonlySet<FieldId> = new Set<FieldId>([
  ...AIR_LIMITS,
  ...(["exposureClass", "specifiedStrength", "waterCementLimit", "aggregate"] as const),
  ...(["aggregateSize", "theoreticalDensity", "densityTarget", "densityLow"] as const),
  ...(["densityHigh", "nominalSlump", "slumpLow", "slumpHigh"] as const),
  ...(["temperatureLow", "temperatureHigh"] as const),
]);

/** What a day's tests have in common; a reading, a sample or a time is of one test. */
const OF_ALL_TESTS: ReadonlySet<FieldId> = new Set<FieldId>([
  ...OF_A_MIX,
  ...(["date", "mix", "alcohol", "alcoholUnit", "meter", "meterCheck"] as const),
  ...(["bowlVolume", "cupVolume", "measureVolume", "cylinderSize"] as const),
  ...(["deliveryStandard", "dischargeLimit", "revolutionLimit"] as const),
]);

/** "Max. air" may as well be the highest of the day as the highest allowed. */
const EXTREMES: ReadonlySet<FieldId> = new Set<FieldId>(["low", "high"]);
const SPECIFIES: ReadonlySet<Term> = new Set<Term>(["specified", "limit", "allowed"]);

/** No position in the table. */
const NOWHERE = -1;

/** Reads what stands with its label above a table, as at the head of a day's sheet. */
export function saidOnce({ rows, from }: RowsBesideTests, options: ReadingOptions): SaidOnce {
  const form = asOneTest(rows);
  const read = readTable(form, { ...options, headerRow: 0 });
  const said: ValueSaidOnce[] = [];
  const ofAir: ValueSaidOnce[] = [];
  const open: OpenOnce[] = [];
  const at = (index: number) => {
    const { row, column } = form.places[0]?.[index] ?? form.labels[index]!;
    return { header: form.headers[index]!, place: { row: from + row, column } };
  };
  for (const [field, { index, ...column }] of placesOf(read)) {
    const cell = read.cell(0, field);
    const label = at(index);
    if (isBlank(cell) || fieldSaidBy(cell) || (field === "alcohol" && isKind(cell))) continue;
    const value = read.records[0]?.values[field];
    const isRead = value !== undefined && value !== null;
    // No cups are what a sheet without cups says too.
    if (field === "cups" && value === 0) continue;
    const isPlain =
      (field !== "alcohol" || saysNothingElse(label.header)) &&
      (!EXTREMES.has(field) || isSpecified(label.header, rows[form.labels[index]!.row]!));
    const more = { ...label, cell, column: { ...column, index: NOWHERE } };
    if (OF_ALL_TESTS.has(field) && isRead && isPlain) said.push({ field, value, ...more });
    else if (OF_ALL_TESTS.has(field) || field === "cups") open.push({ fields: [field], ...label });
    else if (field === "air") ofAir.push(...asSpecified(cell, options.decimal, more));
  }
  if (!said.some(({ field }) => AIR_LIMITS.has(field))) said.push(...ofAir);
  if (!said.some(({ field }) => AIR_LIMITS.has(field))) said.push(...toldInALine(rows, from));
  for (const column of read.recognised) {
    const isOpen =
      column.state === "asked" && column.candidates.some((one) => OF_ALL_TESTS.has(one));
    if (isOpen) open.push({ fields: column.candidates, ...at(column.index) });
  }
  return { said, open };
}

/** Of what stands below a table the limits of the air: a day there is that of a signature. */
export function limitsBelow(foot: RowsBesideTests, options: ReadingOptions): SaidOnce {
  const { said } = saidOnce(foot, options);
  return { said: said.filter(({ field }) => AIR_LIMITS.has(field)), open: [] };
}

function placesOf({ columns }: SheetReading): readonly (readonly [FieldId, ColumnPlace])[] {
  return Object.entries(columns) as [FieldId, ColumnPlace][];
}

/** The only line that tells the air that is asked for; of several none, for each is of other tests. */
function toldInALine(rows: Cells, from: number): readonly ValueSaidOnce[] {
  const told = rows.flatMap((cells, row) =>
    cells.flatMap((cell, column) => {
      const value = limitsInLine(cell);
      return value ? [{ value, cell, place: { row: from + row, column } }] : [];
    }),
  );
  const [only, another] = told;
  if (!only || another) return [];
  const header = String(only.cell);
  return [{ ...only, field: "target", header, column: { header, index: NOWHERE } }];
}

/** "Alcohol: 70 % isopropyl" says which, not how much. */
function isKind(cell: CellValue): boolean {
  return typeof cell === "string" && !/\d(?![\d.,\s]*%)/.test(cell);
}

/** Whether all words of a label are known: "Alcohol on hand" is not what went into a test. */
function saysNothingElse(label: string): boolean {
  return understand(label, languagesOf([label])).words.every(({ terms }) => terms.length > 0);
}

/** Whether a label says that its value is asked for, or another one in its row does. */
function isSpecified(label: string, row: Cells[number]): boolean {
  const texts = [label, ...row.filter(isLabelText)];
  return texts.some((text) =>
    understand(text, languagesOf([text])).words.some(({ terms }) =>
      terms.some((term) => SPECIFIES.has(term)),
    ),
  );
}

/** "Air: 6 ± 1.5" above the tests of a day is what they were to have. */
function asSpecified(
  cell: CellValue,
  decimal: DecimalMark | undefined,
  more: Omit<ValueSaidOnce, "field" | "value">,
): readonly ValueSaidOnce[] {
  const value = airSpecificationFromCell(cell, decimal);
  const isRange = value && !isIssue(value) && value.low !== undefined && value.high !== undefined;
  return isRange ? [{ field: "target", value, ...more }] : [];
}
