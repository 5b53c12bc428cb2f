import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { plainly } from "./kept-columns";
import type { KeptColumn } from "./recognition";
import type { SheetTable } from "./sheet-table";
import { languagesOf, understand } from "./words-in-header";

/** Two readings or three in one cell, "6.25/6.25" or "7,0 / 6,5 / 6,5"; one that was not taken is a line or nothing. */
const NUMBER = "\\d{1,2}(?:[.,]\\d{1,2})?";
const NEXT = `\\s*[/;]\\s*(${NUMBER}|[-–—]+)?`;
const READINGS = new RegExp(`^\\s*(${NUMBER})${NEXT}(?:${NEXT})?\\s*%?\\s*$`);
/** No scale goes further; a larger number is of a day or of something else. */
const LONGEST_SCALE = 15;

/** So many cells tell what a column holds, and so many of them hold several readings. */
const LOOKED_AT = 200;
const MOST = 0.6;
const FEWEST = 2;

const ORDER = ["first", "second", "third"] as const;

/** A table with the readings of one column in three columns of their own, the further ones behind its last. */
export interface ReadingsApart {
  readonly table: SheetTable;
  /** What the columns of the readings are. */
  readonly kept: readonly KeptColumn[];
  readonly reading: number;
}

/**
 * Sets the readings of a table apart where its only column of readings holds two or three in a cell.
 *
 * @param kept What the user has said of columns: nothing is set apart against it.
 */
export function readingsInOneCell(
  table: SheetTable,
  kept: readonly KeptColumn[],
): ReadingsApart | undefined {
  const { headers, rows } = table;
  const ofReadings = [...headers.keys()].filter((at) => saysReading(headers[at]));
  const [reading, another] = ofReadings;
  if (reading === undefined || another !== undefined) return undefined;
  const header = shownValue(headers[reading]);
  if (kept.some((each) => plainly(each.header) === plainly(header))) return undefined;
  if (!holdsSeveral(rows.slice(0, LOOKED_AT).map((row) => row[reading]))) return undefined;
  const named = ORDER.map((_, i) => `${header} ${i + 1}`);
  const [first, ...further] = named;
  return {
    reading,
    kept: [...kept, ...ORDER.map((field, i) => ({ header: named[i]!, field }))],
    table: {
      ...table,
      headers: [...headers.map((each, at) => (at === reading ? first! : each)), ...further],
      ...(table.titles && {
        titles: [
          ...table.titles.map((each, at) =>
            at === reading ? [...each.slice(0, -1), first!] : each,
          ),
          ...further.map((each) => [each]),
        ],
      }),
      rows: rows.map((row) => {
        if (row.length === 0) return row;
        const [one, ...others] = apart(row[reading] ?? null);
        const own = headers.map((_, at) => (at === reading ? one! : (row[at] ?? null)));
        return [...own, ...others];
      }),
    },
  };
}

function saysReading(header: CellValue | undefined): boolean {
  const text = shownValue(header);
  return understand(text, languagesOf([text])).words.some(({ terms }) => terms.includes("reading"));
}

function holdsSeveral(cells: readonly (CellValue | undefined)[]): boolean {
  const filled = cells.filter((cell) => !isBlank(cell));
  const several = filled.filter((cell) => isSeveral(cell ?? null));
  const withDecimals = several.filter((cell) => /\d[.,]\d/.test(String(cell)));
  return (
    several.length >= FEWEST &&
    several.length >= filled.length * MOST &&
    withDecimals.length * 2 >= several.length
  );
}

function isSeveral(cell: CellValue): boolean {
  const found = typeof cell === "string" ? READINGS.exec(cell) : null;
  const numbers = (found?.slice(1) ?? []).map((part) => Number((part ?? "").replace(",", ".")));
  return found !== null && numbers.every((number) => !(number > LONGEST_SCALE));
}

/** The readings of a cell, three of them; what is no list of readings is left as it is. */
function apart(cell: CellValue): readonly CellValue[] {
  if (!isSeveral(cell)) return [cell, null, null];
  const parts = READINGS.exec(cell as string)!.slice(1);
  return parts.map((part) => (part === undefined || !/\d/.test(part) ? null : part));
}
