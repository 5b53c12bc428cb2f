import { isBlank, type CellValue } from "../measure/cell-value";
import { Problem } from "../measure/problem";
import { recogniseColumns } from "./columns";
import { READING_FIELDS } from "./reading-fields";
import type { SheetTable } from "./sheet-table";

/** A header row further down than this is not looked for: title rows are few. */
const DEEPEST_HEADER = 100;

/** The table found in a block of cells. */
export interface SheetLayout {
  readonly table: SheetTable;
  /** Position of the header row in the block, from 0; the first row of the table is the next one. */
  readonly headerRow: number;
}

/**
 * Finds the table of tests in a block of cells. Rows above the header, such as titles, are left out;
 * every row below it belongs to the table, blank rows too, so that positions stay those of the sheet.
 *
 * The header is the row in which most columns are recognised. A row with a column of meter readings
 * goes before one without, and of equals the upper one counts.
 *
 * @param block Cell values of a rectangle, row by row.
 * @throws Problem `no-header-row`.
 */
export function findTable(block: readonly (readonly CellValue[])[]): SheetLayout {
  let headerRow = -1;
  let best = 0;
  block.slice(0, DEEPEST_HEADER).forEach((row, i) => {
    const likeness = headerLikeness(row);
    if (likeness > best) [headerRow, best] = [i, likeness];
  });
  const headers = block[headerRow];
  if (!headers) throw new Problem("no-header-row");
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
