import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import type { FieldId } from "./fields";
import { fieldSaidBy } from "./labels";
import { readHeader } from "./units-in-header";
import { isBlankOrWords } from "./units-row";

/** So many different fields are named in a row of headers. */
const FEWEST_FIELDS = 3;

/** Whether a row is the header of a table: texts only, half of them or more say fields. */
export function isHeaderRow(row: readonly CellValue[]): boolean {
  if (!row.every(isBlankOrWords)) return false;
  let texts = 0;
  const said = new Set<FieldId>();
  for (const cell of row) {
    if (isBlank(cell)) continue;
    texts++;
    const field = fieldSaidBy(cell);
    if (field) said.add(field);
  }
  return said.size >= FEWEST_FIELDS && said.size * 2 >= texts;
}

/**
 * The first row below a header that heads the columns otherwise: another table begins there, in which the
 * columns hold other things.
 *
 * @returns Its position; -1 where there is none.
 */
export function rowHeadedAgain(
  headers: readonly CellValue[],
  rows: readonly (readonly CellValue[])[],
): number {
  return rows.findIndex((row) => {
    const first = row.find((cell) => !isBlank(cell));
    return typeof first === "string" && isHeaderRow(row) && !isSameHeader(row, headers);
  });
}

/** The titles of the table that begins there stand above its header, below a blank row. */
export function withTitlesAbove(rows: readonly (readonly CellValue[])[], header: number): number {
  const filled = (row: number) => rows[row]?.filter((cell) => !isBlank(cell)) ?? [];
  let title = header;
  while (filled(title - 1).length === 1 && typeof filled(title - 1)[0] === "string") title--;
  return title < header && title > 0 && filled(title - 1).length === 0 ? title : header;
}

/** Whether every header of a row says what stands above it in words or in the field and its unit. */
function isSameHeader(row: readonly CellValue[], headers: readonly CellValue[]): boolean {
  return row.every((cell, at) => {
    if (isBlank(cell)) return true;
    const [one, other] = [shownValue(cell), shownValue(headers[at] ?? null)];
    if (plainly(one) === plainly(other)) return true;
    const field = fieldSaidBy(one);
    return field !== undefined && field === fieldSaidBy(other) && unitOf(one) === unitOf(other);
  });
}

function plainly(header: string): string {
  return folded(header).replace(/\s+/g, " ").trim();
}

/** Percent signs are left out as often as not. */
function unitOf(header: string): string | undefined {
  const { unit } = readHeader(header);
  return unit?.dimension === "percent" ? undefined : unit?.unit;
}
