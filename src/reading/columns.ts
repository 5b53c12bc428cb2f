import { alcoholUnitNamed } from "../measure/alcohol";
import { shownValue, type CellValue } from "../measure/cell-value";
import type { ColumnPlace, Columns } from "./column-place";
import type { FieldId } from "./fields";
import { HEADINGS } from "./vocabulary/english";

/** Words that say nothing about what a column holds. */
const NEUTRAL = new Set(
  "a an at by concrete for fresh in meter no number of on recorded taken test tested the value volumetric".split(
    " ",
  ),
);
/** Units and the like, in brackets or behind a heading without them: "alcohol oz", "air %". */
const UNITS = new Set(
  "% pct percent pt pts pint pints oz ozs ounce ounces l liter liters litre litres ml min mins minute minutes s sec secs second seconds inch inches in mm pcf divs".split(
    " ",
  ),
);

/** Which of the readings a column holds, where a header says so in brackets: "Meter reading (1st)". */
const WHICH_READING = new Set("1st 2nd 3rd 1 2 3 first second third initial final".split(" "));

/** A header that is the heading itself, and one that differs from it in words without meaning. */
const SAME = 1000;
const SAME_IN_MEANING = 900;

interface Heading {
  readonly text: string;
  /** The words that mean something, in one order. */
  readonly meaning: string;
  readonly unit?: string;
}

interface Candidate {
  readonly index: number;
  readonly field: FieldId;
  readonly score: number;
  readonly unit?: string;
}

interface FieldHeading {
  readonly field: FieldId;
  readonly text: string;
}

/** The headings of all fields by their text, by their meaning and by their first word. */
const BY_TEXT = new Map<string, FieldHeading[]>();
const BY_MEANING = new Map<string, FieldHeading[]>();
const BY_FIRST_WORD = new Map<string, FieldHeading[]>();
for (const [name, headings] of Object.entries(HEADINGS)) {
  for (const written of headings) {
    const words = written.split(" ");
    const { text, meaning } = headingOf(words);
    const heading = { field: name as FieldId, text };
    add(BY_TEXT, text, heading);
    // One such as "air meter no" says too little without its plain words.
    if (text === meaning || meaning.includes(" ")) add(BY_MEANING, meaning, heading);
    // One word alone may mean anything in company: "air pump" is not the air content.
    if (words.length > 1) add(BY_FIRST_WORD, words[0]!, heading);
  }
}

/**
 * Recognises what the columns of a field sheet hold from their headers.
 *
 * A header that is one of a field's headings wins over one that says the same in other order or with
 * words such as "of the", and that over one that only contains it; with equals, the column further
 * left. A field has one column and a column one field.
 *
 * @param headers The header cells, in order.
 * @returns For each field found, its place, header and the unit written in the header.
 */
export function recogniseColumns(headers: readonly CellValue[]): Columns {
  const candidates = numberedReadings(headers.map((header) => readHeading(shownValue(header))))
    .flatMap((heading, index) => candidatesFor(heading, index))
    .sort((a, b) => b.score - a.score || a.index - b.index);
  const columns: Partial<Record<FieldId, ColumnPlace>> = {};
  const taken = new Set<number>();
  for (const { index, field, unit } of candidates) {
    if (columns[field] || taken.has(index)) continue;
    taken.add(index);
    columns[field] = { index, header: shownValue(headers[index]).trim(), unit };
  }
  return columns;
}

/** Splits a header into its words and the unit in brackets or at its end. */
function readHeading(header: string): Heading {
  const bracketed = [...header.matchAll(/[([]([^)\]]*)[)\]]/g)].map((match) => match[1]!.trim());
  const words = wordsOf(header.replace(/[([][^)\]]*[)\]]/g, " "));
  const units: string[] = [];
  while (words.length > 1 && isUnitHere(words.at(-1)!, words)) units.unshift(words.pop()!);
  while (words.length > 1 && isUnitInFront(words[0]!)) units.push(words.shift()!);
  const wordsInBrackets = bracketed.flatMap(wordsOf);
  if (words.includes("reading"))
    words.push(...wordsInBrackets.filter((word) => WHICH_READING.has(word)));
  const inBrackets = wordsInBrackets.filter((word) => UNITS.has(word));
  const unit = inBrackets.at(-1) ?? units.at(-1) ?? bracketed[0];
  return { ...headingOf(words), unit };
}

/** Behind a time "min" is minutes and "second" a unit; else the least, and the second of several. */
function isUnitHere(word: string, words: readonly string[]): boolean {
  if (word !== "min" && word !== "second") return UNITS.has(word);
  return words.some((other) => /time|settl|stab|inver|roll/.test(other));
}

/** As in "% air" and "oz of alcohol". */
function isUnitInFront(word: string): boolean {
  return /^(%|pct|percent)$/.test(word) || alcoholUnitNamed(word) !== undefined;
}

/**
 * Columns that are all headed "Reading" hold the readings in the order in which they were taken. A
 * table of the spreadsheet numbers equal headers from the second on: "Reading", "Reading2".
 */
function numberedReadings(headings: readonly Heading[]): readonly Heading[] {
  const plain = headings.filter(({ meaning }) => meaning === "reading");
  const means = (meaning: string) => headings.some((heading) => heading.meaning === meaning);
  if (plain.length < 2 && !(means("2 reading") && !means("1 reading"))) return headings;
  return headings.map((heading) => {
    const place = plain.indexOf(heading) + 1;
    return place ? { ...heading, ...headingOf(["reading", String(place)]) } : heading;
  });
}

function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/#/g, " no ")
    .replace(/\b(?:rd?n?gs?|readings)\b/g, "reading")
    .replace(/\b(rd?n?g|reading)(\d)\b/g, "reading $2")
    .replace(/\+\s*\/\s*[-−]/g, " ± ")
    .replace(/[^\p{L}\p{N}%±]+/gu, " ")
    .trim()
    .split(" ");
}

function headingOf(words: readonly string[]): Heading {
  const telling = words.filter((word) => !NEUTRAL.has(word));
  return { text: words.join(" "), meaning: [...telling].sort().join(" ") };
}

function candidatesFor({ text, meaning, unit }: Heading, index: number): Candidate[] {
  if (text === "") return [];
  const scored = (score: number) => (heading: FieldHeading) => {
    return { index, field: heading.field, score, unit };
  };
  const contained = text
    .split(" ")
    .flatMap((word) => BY_FIRST_WORD.get(word) ?? [])
    .filter((heading) => ` ${text} `.includes(` ${heading.text} `));
  return [
    ...(BY_TEXT.get(text) ?? []).map(scored(SAME)),
    ...(BY_MEANING.get(meaning) ?? []).map(scored(SAME_IN_MEANING)),
    // Of the headings that a header contains the longest counts.
    ...contained.map((heading) => scored(heading.text.length)(heading)),
  ];
}

function add<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  map.set(key, [...(map.get(key) ?? []), value]);
}
