import { isBlank, type CellValue } from "../measure/cell-value";
import { Problem } from "../measure/problem";
import { recogniseColumns } from "./columns";
import { READING_FIELDS } from "./fields";
import type { SheetTable } from "./sheet-table";
import { headersOfTwoRows, mayBeOneOfTwo } from "./two-header-rows";

/** A header row further down than this is not looked for: title rows are few. */
const DEEPEST_HEADER = 100;

/** The table found in a block of cells. */
export interface SheetLayout {
  readonly table: SheetTable;
  /** Position of the last header row in the block, from 0; the first row of the table is the next. */
  readonly headerRow: number;
}

/**
 * Finds the table of tests in a block of cells. Rows above the header, such as titles, are left out;
 * every row below it belongs to the table, blank rows too, so that positions stay those of the sheet.
 *
 * The header is the row in which most columns are recognised. A row with a column of meter readings
 * goes before one without, and of equals the upper one counts. Two rows together are the header
 * where more columns are recognised from both.
 *
 * @param block Cell values of a rectangle, row by row.
 * @throws Problem `no-header-row`.
 */
export function findTable(block: readonly (readonly CellValue[])[]): SheetLayout {
  const top = block.slice(0, DEEPEST_HEADER);
  const single = top.map((headers, headerRow) => ({ headers, headerRow }));
  const double = top.slice(1).flatMap((lower, i) => {
    const upper = top[i]!;
    const both = mayBeOneOfTwo(upper) && mayBeOneOfTwo(lower);
    return both ? [{ headers: headersOfTwoRows(upper, lower), headerRow: i + 1 }] : [];
  });
  let best = 0;
  let found: (typeof single)[number] | undefined;
  for (const candidate of [...single, ...double]) {
    const likeness = headerLikeness(candidate.headers);
    if (likeness > best) [found, best] = [candidate, likeness];
  }
  if (!found) throw new Problem("no-header-row");
  const { headers, headerRow } = found;
  return { table: { headers, rows: block.slice(headerRow + 1) }, headerRow };
}

/** 0 for a row that cannot be a header. */
function headerLikeness(row: readonly CellValue[]): number {
  const texts = row.map((cell) => (typeof cell === "string" ? cell : null));
  const columns = recogniseColumns(texts);
  const recognised = Object.keys(columns).length;
  // A row of results may say "second reading" in a remark, but it holds more numbers than such words.
  const numbers = row.filter((cell) => typeof cell === "number").length;
  if (recognised <= numbers) return 0;
  const hasReadings = READING_FIELDS.some((field) => columns[field]);
  // One word alone over a table is a title, such as "Tests"; a header stands beside others.
  const standsAlone = texts.filter((text) => !isBlank(text)).length < 2;
  if (hasReadings) return 1000 + recognised;
  return standsAlone ? 0 : recognised;
}
