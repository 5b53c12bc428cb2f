import type { Word } from "./dictionary";
import type { Evidence } from "./evidence";
import type { Term } from "./terms";
import { readHeader } from "./units-in-header";
import type { Dimension } from "./unit-spellings";
import { LETTERED, type UnderstoodHeader } from "./words-in-header";

/** A column as its headers and cells tell of it. */
export interface Told {
  /** The column's own header, or the title right above where it has none. */
  readonly own: UnderstoodHeader;
  /** Titles of its groups, the nearest first. */
  readonly titles: readonly UnderstoodHeader[];
  readonly unit?: Dimension;
  readonly cells: Evidence;
  /** What the words of the header and of its titles can mean, to see at once what cannot be. */
  readonly terms: ReadonlySet<Term>;
}

/** The ways to read the header rows of a column, the likeliest first. */
export type Tellings = readonly [Told, ...Told[]];

/** Terms that a unit says as well as a word. */
const SAID_BY_UNIT: Readonly<Partial<Record<Dimension, Term>>> = {
  temperature: "temperature",
  density: "density",
  clock: "time",
  dosage: "material",
  stress: "strength",
  mass: "weight",
  percent: "share",
  bulk: "bulk",
};

/** The name of a meter, a truck or a person over its columns: its letters and figures say nothing. */
const IS_NAME = /^\p{Lu}{1,4}[- ]?\d{1,4}$/u;

/** A letter or figure that only counts the groups: "[B] Air meter", "2) Concrete". */
const ENUMERATED = /^\s*(?:[[(](?:\p{Lu}|\d)[\])]|(?:\p{Lu}|\d)\))\s+(?=\S)/u;

/** Yes or no in Spanish below a title, elsewhere a serial number. */
const SI_NO = /^\s*s\s?\/\s?n\s*$/i;

/** What a specification limits: "Min" below it is the least. */
const LIMITED: ReadonlySet<Term> = new Set<Term>([
  "air",
  "specified",
  "limit",
  "density",
  "temperature",
  "slump",
]);
const IN_TIME: ReadonlySet<Term> = new Set<Term>(["settle", "inversion", "roll", "time"]);

/** Of a name such as "5520L" the letter is no unit. */
const OF_NAMES: ReadonlySet<Term> = new Set<Term>([
  "mix",
  "load",
  "sample",
  "number",
  "truck",
  "batch",
  "set",
  "lab",
  "class",
]);

/** The header rows of a column that hold something, the lowest last. */
export function writtenHeaders(headers: readonly string[]): readonly string[] {
  return headers.map((header) => header.trim()).filter((header) => header !== "");
}

/**
 * The ways to read the header rows of a column: the last as its header below titles, and the last two as
 * one header that is broken over two rows, "Unit" over "Weight".
 */
export function tellings(
  headers: readonly string[],
  cells: Evidence,
  understood: (header: string) => UnderstoodHeader,
): Tellings {
  const written = writtenHeaders(headers);
  const above = written.slice(0, -1).reverse();
  const own = understood(written.at(-1) ?? "");
  const titles = above.map((title) =>
    understood(IS_NAME.test(title) ? "" : title.replace(ENUMERATED, "")),
  );
  const [title, ...higher] = titles;
  if (!title) return [tell(own, titles, cells)];
  const readings = titles.some(({ words }) => words.some(({ terms }) => terms.includes("reading")));
  const text = own.text.toLowerCase().replace(/\.$/, "");
  // Below the title of the readings "Second" is no unit of time.
  const letter = readings ? (text === "second" ? text : LETTERED[text]) : undefined;
  if (SI_NO.test(own.text) && cells.yesNo > 0.65) {
    const unit = { unit: "si/no", dimension: "yes-no" } as const;
    return [tell({ ...title, text: own.text, unit }, higher, cells)];
  }
  if (text === "min" && isLimited(title)) {
    return [tell({ ...own, words: [saying("low", own.text)], onlyUnit: undefined }, titles, cells)];
  }
  if (own.onlyUnit && !letter) {
    return [tell({ ...title, text: own.text, unit: own.onlyUnit }, higher, cells)];
  }
  if (letter) return [tell({ ...own, words: [saying(letter, own.text)] }, titles, cells)];
  // A word that is not known may make anything of the title above it.
  const isUnknown = own.words.length > 0 && own.words.every(({ terms }) => terms.length === 0);
  if (isUnknown) return [tell(own, titles, cells)];
  const broken = understood(`${above[0]!} ${own.text}`);
  return [tell(own, titles, cells), tell({ ...broken, text: own.text }, higher, cells)];
}

function isLimited({ words }: UnderstoodHeader): boolean {
  const terms = words.flatMap((word) => word.terms);
  return terms.some((term) => LIMITED.has(term)) && !terms.some((term) => IN_TIME.has(term));
}

function tell(own: UnderstoodHeader, titles: readonly UnderstoodHeader[], cells: Evidence): Told {
  const dimensions = [own, ...titles].map(({ unit }) => unit?.dimension);
  const unit = dimensions.find((known) => known !== undefined) ?? dimensionInCells(own, cells);
  const said = unit && SAID_BY_UNIT[unit];
  const isSaid = own.words.some(({ terms }) => said !== undefined && terms.includes(said));
  const size = unit === "liquid" ? sizeOf([own, ...titles], cells.unit) : undefined;
  const words = [
    ...own.words,
    ...(said && !isSaid ? [saying(said, said)] : []),
    ...(size && own.words.length > 0 ? [saying(size, size)] : []),
  ];
  return told({ ...own, words }, titles, cells, unit);
}

/** What the unit behind the numbers of a column measures, of those that tell quantities apart: "68F". */
function dimensionInCells(own: UnderstoodHeader, { unit }: Evidence): Dimension | undefined {
  const isName = own.words.some(({ terms }) => terms.some((term) => OF_NAMES.has(term)));
  if (!unit || isName) return undefined;
  const dimension = readHeader(`value (${unit})`).unit?.dimension;
  return dimension === "temperature" || dimension === "length" ? dimension : undefined;
}

/** Whether liquid is counted by what a meter holds or by what a truck does. */
function sizeOf(headers: readonly UnderstoodHeader[], inCells: string | undefined): Term {
  const unit = headers.find(({ unit }) => unit?.dimension)?.unit?.unit ?? inCells ?? "";
  return /^(?:l|lts?|ltr|lit|gal|qt|quart)/i.test(unit) ? "by-gallon" : "by-pint";
}

/** The same column with more words in its header. */
export function withWord({ own, titles, cells, unit }: Told, term: Term, text: string): Told {
  const words = [...own.words, saying(term, text)];
  return told({ ...own, words, headed: [] }, titles, cells, unit);
}

function told(
  own: UnderstoodHeader,
  titles: readonly UnderstoodHeader[],
  cells: Evidence,
  unit: Dimension | undefined,
): Told {
  const terms = [own, ...titles].flatMap(({ words }) => words.flatMap((word) => word.terms));
  return { own, titles, unit, cells, terms: new Set(terms) };
}

function saying(term: Term, text: string): Word {
  return { text, terms: [term], aside: false, misspelt: false };
}
