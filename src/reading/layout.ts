import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { issue, type Issue } from "../measure/issue";
import { isNumber } from "./columns-of-tests";
import { faultTold } from "./fault-told";
import { READING_FIELDS } from "./fields";
import { headersByColumn, inOneRow, mayBeOneOfSeveral, mayBeTitles } from "./header-rows";
import { recognise } from "./recognise";
import type { KeptColumn } from "./recognition";
import type { SheetTable } from "./sheet-table";
import { saidOfTest } from "./testers-word";
import { isUnitsRow } from "./units-row";

/** A header row further down than this is not looked for: title rows are few. */
const DEEPEST_HEADER = 100;
const MOST_HEADER_ROWS = 3;
/** A number that counts nothing, kept as a text. */
const VALUE = /^\s*\d+[.,]\d+\s*$|^\s*\d{2,}\s*$/;

/** The table found in a block of cells. */
export interface SheetLayout {
  readonly table: SheetTable;
  /** Position of the last header row in the block, from 0; the first row of the table is the next. */
  readonly headerRow: number;
  /** For each column its titles from the top down, its own header last. */
  readonly headers: readonly (readonly string[])[];
}

/** The first row of a table's headers, be it of the titles of groups above them. */
export function topOfHeaders({ headerRow, headers }: SheetLayout): number {
  return headerRow + 1 - Math.max(...headers.map((each) => each.length));
}

interface Likeness {
  readonly fields: number;
  /** Columns that may be a field and have to be asked about. */
  readonly asked: number;
  readonly readings: boolean;
}

/**
 * Finds the table of tests in a block of cells. Rows above the header, such as titles, are left out;
 * every row below it belongs to the table, blank rows too, so that positions stay those of the sheet.
 *
 * The header is the row in which most columns are recognised. A row with a column of meter readings
 * goes before one without; of equals the one with more columns to ask about, then the upper one. Two or three rows together are the
 * header where more columns are recognised from all of them.
 *
 * @param block Cell values of a rectangle, row by row.
 * @param kept What the user has said of columns.
 * @returns The issue `no-header-row` where there is none.
 */
export function findTable(
  block: readonly (readonly CellValue[])[],
  kept?: readonly KeptColumn[],
): SheetLayout | Issue {
  const top = block.slice(0, DEEPEST_HEADER);
  let best: Likeness = { fields: 0, asked: 0, readings: false };
  let found: { headers: readonly (readonly string[])[]; last: number } | undefined;
  for (let count = 1; count <= MOST_HEADER_ROWS; count++) {
    for (let last = count - 1; last < top.length; last++) {
      const rows = top.slice(last - count + 1, last + 1);
      if (count > 1 && !rows.every(mayBeOneOfSeveral)) continue;
      if (!rows.slice(0, -1).every(mayBeTitles)) continue;
      // A row of units is read with the rows below the header.
      if (count > 1 && isUnitsRow(rows.at(-1)!)) continue;
      const headers = headersByColumn(rows);
      const above = top[last - count];
      const likeness = headerLikeness(rows, headers, kept);
      const ofAnother = likeness.readings && above && areOfAnotherTest([above, ...rows], kept);
      if (ofAnother) continue;
      if (isMore(likeness, best)) [found, best] = [{ headers, last }, likeness];
    }
  }
  if (!found) return issue("no-header-row");
  const broken = headersBrokenOff(found, best, top, kept);
  if (broken) {
    const headerRow = found.last + 1;
    const table = { headers: broken, titles: undefined, rows: block.slice(headerRow + 1) };
    return { table, headerRow, headers: broken.map((header) => [header]) };
  }
  const { headers, last } = found;
  const single = headers.every((each) => each.length === 1);
  const inOne = single ? top[last]! : inOneRow(headers);
  const titles = single ? undefined : headers;
  return {
    table: { headers: inOne, titles, rows: block.slice(last + 1) },
    headerRow: last,
    headers,
  };
}

/**
 * The headers of one row with the words of the row below, where each goes on with the header above it, "First" over
 * "reading": a row of words between headers and tests, which say no less with it. No title stands over others there.
 */
function headersBrokenOff(
  found: { readonly headers: readonly (readonly string[])[]; readonly last: number },
  best: Likeness,
  top: readonly (readonly CellValue[])[],
  kept: readonly KeptColumn[] | undefined,
): readonly string[] | undefined {
  const [below, first] = [top[found.last + 1], top[found.last + 2]];
  const isOneRow = found.headers.every((each) => each.length === 1);
  if (!isOneRow || !below || !first?.some((cell) => isNumber(cell))) return undefined;
  const goesOn = below.every(
    (cell, at) =>
      isBlank(cell) ||
      (typeof cell === "string" && !/\d/.test(cell) && found.headers[at]![0] !== ""),
  );
  const words = below.filter((cell) => !isBlank(cell)).length;
  if (below.some(isRemark)) return undefined;
  if (words < 2 || !goesOn || isUnitsRow(below)) return undefined;
  const joined = found.headers.map(([own], at) => `${own!} ${shownValue(below[at])}`.trim());
  const likeness = headerLikeness(
    [joined],
    joined.map((header) => [header]),
    kept,
  );
  const isMoreOrSame = likeness.readings && likeness.fields >= best.fields;
  return isMoreOrSame ? joined : undefined;
}

/** "Note:", "VOID" and "bowl leaked" are told of a test and go on with no header. */
const isRemark = (cell: CellValue) =>
  typeof cell === "string" &&
  (/:\s*$/.test(cell) || faultTold(cell) || saidOfTest(cell) !== undefined);

/** Whether the titles in the first of some rows make other tests' of all the readings below them. */
function areOfAnotherTest(
  rows: readonly (readonly CellValue[])[],
  kept: readonly KeptColumn[] | undefined,
): boolean {
  const [above, ...own] = rows as [readonly CellValue[], ...(readonly CellValue[])[]];
  if (!mayBeOneOfSeveral(above) || !mayBeTitles(above)) return false;
  // One title from the first column on is of the whole sheet, and is asked about.
  const firstIn = (row: readonly CellValue[]) => row.findIndex((cell) => !isBlank(cell));
  const titles = above.filter((cell) => !isBlank(cell)).length;
  if (titles === 1 && firstIn(above) <= firstIn(own.at(-1)!)) return false;
  const read = (headers: readonly (readonly string[])[]) =>
    recognise(
      headers.map((each) => ({ headers: each, cells: [] })),
      kept,
    );
  const { columns } = read(headersByColumn(own));
  const readings = READING_FIELDS.flatMap((field) => columns[field]?.index ?? []);
  const { all } = read(headersByColumn(rows));
  const isOfAnother = (at: number) => {
    const column = all[at];
    return column?.state === "not ours" && column.guard === "other test";
  };
  return readings.length > 0 && readings.every(isOfAnother);
}

function isMore(one: Likeness, other: Likeness): boolean {
  if (one.readings !== other.readings) return one.readings;
  if (one.fields !== other.fields) return one.fields > other.fields;
  return one.fields > 0 && one.asked > other.asked;
}

function headerLikeness(
  rows: readonly (readonly CellValue[])[],
  headers: readonly (readonly string[])[],
  kept: readonly KeptColumn[] | undefined,
): Likeness {
  const nothing = { fields: 0, asked: 0, readings: false };
  const row = rows.at(-1)!;
  const filled = row.filter((cell) => !isBlank(cell));
  // Numbers may be kept as texts; "1", "2" and "3" alone may be the headers of three readings.
  const inTexts = filled.some((cell) => typeof cell === "string" && VALUE.test(cell));
  const numbers = filled.filter(
    (cell) => typeof cell === "number" || (inTexts && isNumber(cell)),
  ).length;
  const texts = filled.filter((cell) => typeof cell === "string").length - (inTexts ? numbers : 0);
  // A row of results may say "second reading" in a remark, but it holds more numbers than such words.
  if (texts <= numbers) return nothing;
  const columns = headers.map((each, index) => {
    const isText = rows.length > 1 || typeof row[index] === "string";
    return { headers: isText ? each : [""], cells: [] };
  });
  const recognised = recognise(columns, kept);
  const fields = Object.keys(recognised.columns);
  const asked = recognised.all.flatMap((column) => (column.state === "asked" ? [column] : []));
  // What is asked about without the cells may be plain with them.
  const readings = READING_FIELDS.some(
    (field) => fields.includes(field) || asked.some(({ candidates }) => candidates.includes(field)),
  );
  if (fields.length <= numbers) return nothing;
  // One word alone over a table is a title, such as "Tests"; a header stands beside others.
  const standsAlone = rows.flat().filter((cell) => shownValue(cell).trim() !== "").length < 2;
  return standsAlone && !readings
    ? nothing
    : { fields: fields.length, asked: asked.length, readings };
}
