import type { CellValue } from "../measure/cell-value";
import { assign, type Assigned } from "./assignment";
import { SURE, type Candidate } from "./candidates";
import { checkedOn } from "./checked-on";
import type { ColumnPlace, Columns } from "./column-place";
import { withoutCommonWords } from "./common-words";
import { consider, type Considered } from "./considered";
import { CLEAR_LEAD, describe, type Rival } from "./described-column";
import type { FieldId } from "./fields";
import { finalAsResult } from "./final-result";
import { laterReadings } from "./later-readings";
import { letteredTemperatures } from "./lettered-temperatures";
import { namesOfOtherTests } from "./names-of-other-tests";
import { readingBeforeAnother } from "./reading-before-another";
import type {
  KeptColumn,
  ReadColumn,
  RecognisedColumn,
  Recognition,
  SheetColumn,
} from "./recognition";
import { specifiedInOneCell } from "./specified-in-one-cell";
import { temperatureOfConcrete } from "./temperature-of-concrete";
import { writtenHeaders } from "./told";
import { whichVessel } from "./which-vessel";

/**
 * Recognises what the columns of a field sheet hold, from their headers, the titles above them and what
 * stands in their cells, all columns together.
 *
 * A column is read only where its words say the field outright and nothing else comes near; a field for
 * which two columns come near is asked about, and never the left one taken.
 *
 * @param columns The columns of the sheet, in order.
 * @param kept What the user has said of columns; it outweighs everything else.
 * @returns For every column what it is taken for and why, and the column of each field that is read.
 */
export function recognise(
  columns: readonly SheetColumn[],
  kept: readonly KeptColumn[] = [],
): Recognition {
  const each = inTheirSheet(consider(columns, withUnitsBelow(columns), kept), columns);
  const considered = emptyOnesLast(each);
  const assigned = assign(
    considered.flatMap(({ candidates }, column) =>
      inTheRunning(candidates).map(({ field, score }) => ({ column, field, score })),
    ),
  );
  const read = readOf(considered, assigned);
  const found = new Set(read.values());
  const missing = (field: FieldId) => !found.has(field);
  const header = (index: number) => headerOf(columns[index]!);
  const among = { considered, read, missing, header, rivals: rivalsIn(considered) };
  const all = considered.map((column, index) => describe(column, index, among));
  return { all, columns: columnsOf(all) };
}

/**
 * What could only be asked about gives no column away that something else says for sure: "slump before
 * water" is not the water, so that "slump after water" were the only slump.
 */
function inTheRunning(candidates: readonly Candidate[]): readonly Candidate[] {
  const sure = candidates.filter(isSure);
  return sure.length > 0 ? sure : candidates;
}

/** The headers without what all have in common, and with the units of a row below them. */
function withUnitsBelow(columns: readonly SheetColumn[]): readonly SheetColumn[] {
  return withoutCommonWords(columns).map((column, at) => {
    const unit = columns[at]!.unitBelow;
    const own = column.headers.at(-1) ?? "";
    if (unit === undefined || own.trim() === "") return column;
    return { ...column, headers: [...column.headers.slice(0, -1), `${own} (${unit})`] };
  });
}

/** What the other columns of a sheet make of one. */
function inTheirSheet(
  considered: readonly Considered[],
  columns: readonly SheetColumn[],
): readonly Considered[] {
  const named = namesOfOtherTests(checkedOn(considered), columns);
  const withSpecification = specifiedInOneCell(named, columns);
  const ofReadings = laterReadings(readingBeforeAnother(finalAsResult(withSpecification)));
  return whichVessel(temperatureOfConcrete(letteredTemperatures(ofReadings)));
}

/**
 * A column in which nothing stands, such as the title of a section of a form, is no rival of one that holds
 * something.
 */
function emptyOnesLast(considered: readonly Considered[]): readonly Considered[] {
  const held = new Map<FieldId, number>();
  for (const { told, candidates } of considered) {
    if (told.cells.count === 0) continue;
    for (const { field, score } of candidates.filter(isSure))
      held.set(field, Math.max(score, held.get(field) ?? 0));
  }
  if (held.size === 0) return considered;
  return considered.map((column) => {
    if (column.told.cells.count > 0 || column.kept) return column;
    const candidates = column.candidates.filter(
      ({ field, score }) => (held.get(field) ?? 0) <= score - CLEAR_LEAD,
    );
    return { ...column, candidates };
  });
}

const isSure = ({ score }: Candidate) => score >= SURE;

/** The fields that are read for sure, by column. */
function readOf(
  considered: readonly Considered[],
  assigned: readonly Assigned[],
): ReadonlyMap<number, FieldId> {
  const sure = assigned.filter(({ score, lead }) => score >= SURE && lead >= CLEAR_LEAD);
  return new Map(
    sure.filter(({ column }) => considered[column]).map(({ column, field }) => [column, field]),
  );
}

/** For each field the columns that may be it, the likeliest first. */
function rivalsIn(considered: readonly Considered[]): ReadonlyMap<FieldId, readonly Rival[]> {
  const rivals = new Map<FieldId, Rival[]>();
  considered.forEach(({ candidates }, index) => {
    for (const { field, score } of candidates) {
      const known = rivals.get(field);
      if (known) known.push({ index, score });
      else rivals.set(field, [{ index, score }]);
    }
  });
  for (const list of rivals.values()) list.sort((a, b) => b.score - a.score || a.index - b.index);
  return rivals;
}

function headerOf(column: SheetColumn): string {
  return writtenHeaders(column.headers).at(-1) ?? "";
}

function columnsOf(all: readonly RecognisedColumn[]): Columns {
  return Object.fromEntries(
    all.flatMap((column) => (column.state === "read" ? [[column.field, placeOf(column)]] : [])),
  );
}

function placeOf({ index, header, unit, opposite }: ReadColumn): ColumnPlace {
  return { index, header, unit, ...(opposite && { opposite }) };
}

/** Columns of a table from its header row and its rows. */
export function columnsFrom(
  headers: readonly string[],
  rows: readonly (readonly CellValue[])[],
): readonly SheetColumn[] {
  return headers.map((header, index) => ({
    headers: [header],
    cells: rows.map((row) => row[index] ?? null),
  }));
}
