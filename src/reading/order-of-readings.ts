import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import type { FieldId } from "./fields";
import { fieldSaidBy } from "./labels";
import { CELLS_LOOKED_AT } from "./sheet-columns";
import type { Term } from "./terms";
import { languagesOf, understand } from "./words-in-header";

type Rows = readonly (readonly CellValue[])[];

/** A test is read two or three times; more than these are no readings. */
const MOST_READINGS = 6;
/** A text with one figure in it, such as "Roll 2" and "#3". */
const ONE_FIGURE = /^\D{0,20}([1-6])\D{0,4}$/;
const SAID: Readonly<Partial<Record<FieldId, number>>> = { first: 1, second: 2, third: 3 };
/** What is counted where the readings of a test stand below each other. */
const COUNTS_READINGS: ReadonlySet<Term> = new Set<Term>(["roll", "reading"]);
/** More of the tests than these have a row for each reading. */
const MOST = 0.5;

/** What may be a reading, or a test of its own: "Trial 2". */
const MAY_COUNT_READINGS: ReadonlySet<Term> = new Set<Term>(["attempt"]);

/** Which reading of its test a cell says it is, from 1; `undefined` where it says none. */
export function orderSaidBy(cell: CellValue | undefined): number | undefined {
  if (typeof cell === "number") {
    return Number.isInteger(cell) && cell >= 1 && cell <= MOST_READINGS ? cell : undefined;
  }
  if (typeof cell !== "string" || isBlank(cell)) return undefined;
  const figure = ONE_FIGURE.exec(cell)?.[1];
  if (figure !== undefined) return Number(figure);
  const field = fieldSaidBy(cell);
  return field && SAID[field];
}

/** A column that counts readings. */
export interface OrderColumn {
  readonly at: number;
  /** Whether its header says so, and not only what stands in it. */
  readonly byHeader: boolean;
  /** Whether the readings of a test follow each other, and are not sorted otherwise. */
  readonly inTurn: boolean;
  /** Whether it may as well count the tests of a sample. */
  readonly isOpen: boolean;
}

/**
 * The column that counts the readings of each test, where every row holds one reading: its cells begin at 1
 * again and again, and it is headed as a roll or a reading, or its cells say so themselves.
 */
export function orderColumn(headers: readonly CellValue[], rows: Rows): OrderColumn | undefined {
  const some = rows.slice(0, CELLS_LOOKED_AT);
  const languages = languagesOf(headers.map(shownValue));
  for (const [at, header] of headers.entries()) {
    const cells = some.map((row) => row[at]);
    const inTurn = countsAgain(cells);
    if (!inTurn && !countsOnly(cells)) continue;
    const { words, unit, onlyUnit } = understand(shownValue(header), languages);
    const dimension = unit?.dimension ?? onlyUnit?.dimension;
    // "Roll (min)" is how long, not which.
    if (dimension !== undefined && dimension !== "percent") continue;
    const says = (terms: ReadonlySet<Term>) =>
      words.some((word) => word.terms.some((term) => terms.has(term)));
    const counts = says(COUNTS_READINGS);
    const byHeader = counts || says(MAY_COUNT_READINGS);
    const inWords = some.every((row) => isBlank(row[at]) || fieldSaidBy(row[at]) !== undefined);
    if (byHeader || (inTurn && inWords))
      return { at, byHeader, inTurn, isOpen: !counts && !inWords };
  }
  return undefined;
}

/** Whether cells hold numbers of readings and nothing else, first and second ones among them. */
function countsOnly(cells: readonly (CellValue | undefined)[]): boolean {
  const orders = cells.filter((cell) => !isBlank(cell)).map(orderSaidBy);
  return !orders.includes(undefined) && orders.includes(1) && orders.includes(2);
}

/** Whether cells count 1, 2 … anew for most tests, and hold nothing else; part of a sheet may begin within a test. */
function countsAgain(cells: readonly (CellValue | undefined)[]): boolean {
  let [before, runs, longer] = [0, 0, 0];
  const first = cells.find((cell) => !isBlank(cell));
  const begun = (orderSaidBy(first) ?? 1) - 1;
  if (begun > 0) before = begun;
  for (const cell of cells) {
    if (isBlank(cell)) continue;
    const order = orderSaidBy(cell);
    if (order === undefined || (order !== 1 && order !== before + 1)) return false;
    if (order === 1) runs += 1;
    if (order === 2) longer += 1;
    before = order;
  }
  return longer > 0 && longer > runs * MOST;
}
