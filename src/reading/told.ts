import type { Word } from "./dictionary";
import type { Evidence } from "./evidence";
import type { Term } from "./terms";
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
  const titles = above.map(understood);
  const [title, ...higher] = titles;
  if (!title) return [tell(own, titles, cells)];
  const readings = titles.some(({ words }) => words.some(({ terms }) => terms.includes("reading")));
  const text = own.text.toLowerCase();
  // Below the title of the readings "Second" is no unit of time.
  const letter = readings ? (text === "second" ? text : LETTERED[text]) : undefined;
  if (own.onlyUnit && !letter) {
    return [tell({ ...title, text: own.text, unit: own.onlyUnit }, higher, cells)];
  }
  if (letter) return [tell({ ...own, words: [saying(letter, own.text)] }, titles, cells)];
  const broken = understood(`${above[0]!} ${own.text}`);
  return [tell(own, titles, cells), tell({ ...broken, text: own.text }, higher, cells)];
}

function tell(own: UnderstoodHeader, titles: readonly UnderstoodHeader[], cells: Evidence): Told {
  const dimensions = [own, ...titles].map(({ unit }) => unit?.dimension);
  const unit = dimensions.find((known) => known !== undefined);
  const said = unit && SAID_BY_UNIT[unit];
  const isSaid = own.words.some(({ terms }) => said !== undefined && terms.includes(said));
  const words = said && !isSaid ? [...own.words, saying(said, said)] : own.words;
  return told({ ...own, words }, titles, cells, unit);
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
