import { isBlank, type CellValue } from "../measure/cell-value";
import { isNumber } from "./columns-of-tests";
import { fieldSaidBy } from "./labels";
import { readHeader } from "./units-in-header";

/** What else may stand in a row of units is short: "No.", "Y/N", "hh:mm". */
const LONGEST_BESIDE = 12;

/**
 * Whether a row is nothing but the units of the columns, as people write them below the headers: two
 * units at least, as many as all the rest, and no figure of a test.
 */
export function isUnitsRow(row: readonly CellValue[]): boolean {
  if (!row.every(isBlankOrWords)) return false;
  let units = 0;
  let others = 0;
  for (const cell of row) {
    if (typeof cell !== "string" || isBlank(cell)) continue;
    if (unitIn(cell) !== undefined) units++;
    else if (cell.trim().length > LONGEST_BESIDE || /\d/.test(cell)) return false;
    else others++;
  }
  return units >= 2 && units >= others;
}

/** Most rows are tests and hold a number; that is seen before a word of them is looked at. */
export function isBlankOrWords(cell: CellValue): boolean {
  return isBlank(cell) || (typeof cell === "string" && !isNumber(cell));
}

/** The unit of each column, from a row of units right below the header; `undefined` without such a row. */
export function unitsBelow(
  rows: readonly (readonly CellValue[])[],
): readonly (string | undefined)[] | undefined {
  const below = rows[0];
  if (!below || !isUnitsRow(below)) return undefined;
  return below.map((cell) =>
    typeof cell === "string" ? (unitIn(cell) ?? cupsIn(cell)) : undefined,
  );
}

/** Water is counted in cups as well as measured: what stands below it says which. */
function cupsIn(text: string): string | undefined {
  return text.length <= LONGEST_BESIDE && fieldSaidBy(text) === "cups" ? text.trim() : undefined;
}

/** The unit that a text is, without its brackets; `undefined` for any other text. */
export function unitIn(text: string): string | undefined {
  const unit = text
    .trim()
    .replace(/^[([{]|[)\]}]$/g, "")
    .trim();
  if (unit === "" || unit.length > LONGEST_BESIDE) return undefined;
  return readHeader(`(${unit})`).onlyUnit?.dimension && unit;
}
