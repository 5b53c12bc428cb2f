import { isBlank, type CellValue } from "../measure/cell-value";
import type { BlockPlace } from "./block-place";
import type { Cells } from "./labelled-value";
import { isLabelText } from "./labels";
import type { SheetReading } from "./sheet-reading";
import { askedOfTests } from "./unread-column";
import type { Term } from "./terms";
import { languagesOf, understand } from "./words-in-header";

/** A title above the tests that speaks of another method, and where it stands. */
export interface TitleOfAnotherMethod {
  readonly text: string;
  readonly place: BlockPlace;
}

/** More texts in a row are headers or labels with their values. */
const MOST_TEXTS = 2;

/** In whatever unit; a larger number is a day. */
const GREATEST_PRESSURE = 10_000;

/** Of what may say "pressure" the words that can mean nothing else: "type A" may be of a mix. */
const SAYS_PRESSURE = /press|presi|druck|231|152/i;

/** A pump and a pipe have a pressure too: the word counts alone, and beside what is of an air test. */
const PRESSURE_OF_ANYTHING = /^(press|pressure|presion|pression|druck)$/;
const OF_AN_AIR_TEST: ReadonlySet<Term> = new Set<Term>([
  "air",
  "content",
  "meter",
  "measure",
  "method",
  "test",
  "reading",
]);

/**
 * The title above the tests of a block that says pressure, and nothing of the volumetric method; the nearest to
 * the tests that says either counts.
 *
 * @param before The first row of the headers, or of a form.
 * @param isBelowAnother Whether a table stands above: its rows end the search.
 */
export function titleOfAnotherMethod(
  block: Cells,
  before: number,
  isBelowAnother = false,
): TitleOfAnotherMethod | undefined {
  for (let row = before - 1; row >= 0; row--) {
    const filled = [...block[row]!.entries()].filter(([, cell]) => !isBlank(cell));
    if (filled.length > MOST_TEXTS && isBelowAnother) return undefined;
    if (filled.length > MOST_TEXTS) continue;
    const beside = filled[1]?.[1];
    const speaks = filled.flatMap(([column, cell]) =>
      isLabelText(cell)
        ? methodsIn(cell, beside).map((method) => ({ method, column, text: cell }))
        : [],
    );
    if (speaks.some(({ method }) => method === "volumetric")) return undefined;
    const [found] = speaks;
    if (found) return { text: found.text.trim(), place: { row, column: found.column } };
  }
  return undefined;
}

function methodsIn(title: string, beside?: CellValue): ("volumetric" | "pressure")[] {
  const { words } = understand(title, languagesOf([title]));
  const isOfAir =
    (words.length === 1 && !/\d/.test(title) && !isAmount(beside)) ||
    words.some(({ terms }) => terms.some((term) => OF_AN_AIR_TEST.has(term)));
  return words.flatMap(({ terms, text }) => {
    if (terms.includes("volumetric")) return ["volumetric"];
    const says = terms.includes("pressure") && SAYS_PRESSURE.test(text);
    return says && (isOfAir || !PRESSURE_OF_ANYTHING.test(text)) ? ["pressure"] : [];
  });
}

/** "Pressure | 30" is a label with its amount; a day is none. */
function isAmount(cell: CellValue | undefined): boolean {
  if (typeof cell === "number") return cell < GREATEST_PRESSURE;
  return typeof cell === "string" && /^\s*\d+([.,]\d+)?\s*\p{L}*\s*$/u.test(cell);
}

/** Tests below such a title: unless a column names their method, it is open whether they are of this one. */
export function withTitle(
  read: SheetReading,
  title: TitleOfAnotherMethod | undefined,
): SheetReading {
  if (!title || read.has("method")) return read;
  const { text, place } = title;
  const at = { index: place.column, place, header: text };
  const isTest = (record: number) => read.records[record]?.blank === false;
  return { ...read, unread: [...read.unread, askedOfTests("title-of-another-method", at, isTest)] };
}
