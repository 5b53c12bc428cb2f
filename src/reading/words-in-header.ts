import { cylindersInHeader } from "./cylinders-in-header";
import { Dictionary, type Word } from "./dictionary";
import type { FieldId } from "./fields";
import { remembered } from "./remembered";
import type { Term } from "./terms";
import { UNITS } from "./unit-spellings";
import { readHeader, type HeaderUnit, type Token } from "./units-in-header";
import { ENGLISH } from "./vocabulary/english";
import { FRENCH } from "./vocabulary/french";
import { GERMAN } from "./vocabulary/german";
import { SPANISH } from "./vocabulary/spanish";

const DICTIONARIES: readonly Dictionary[] = [ENGLISH, SPANISH, FRENCH, GERMAN].map(
  (vocabulary) => new Dictionary(vocabulary),
);

/** A header with what its words can mean. */
export interface UnderstoodHeader {
  readonly text: string;
  readonly words: readonly Word[];
  readonly unit?: HeaderUnit;
  readonly onlyUnit?: HeaderUnit;
  /** Fields that are headed with exactly these words, brackets and unit left out. */
  readonly headed: readonly FieldId[];
}

/** Readings are lettered as well as numbered. */
export const LETTERED: Readonly<Record<string, Term>> = { a: "first", b: "second", c: "third" };

/** Terms beside which "min" and "second" are units. */
const TIMED = new Set<string>(["settle", "inversion", "roll", "time", "longest", "discharged"]);

const partsOf = remembered(
  (header: string) => readHeader(apart(header)),
  (header) => header,
);

/** Names of columns without spaces: a unit behind a known word, a count before one. */
const RUN_TOGETHER =
  /^(?:(n|no|num)(\p{Ll}{3,})|(\p{Ll}{3,}?)(pt|pts|oz|ml|min|sec|div|divs|pct|pcf|psi|mm|degf|degc))$/u;

/** "alcpt", "ncups": what was run together is set apart where no word is written so. */
function apart(header: string): string {
  const text = header.trim();
  const found = RUN_TOGETHER.exec(text);
  const isKnown = (word: string) => DICTIONARIES.some((dictionary) => dictionary.has(word));
  const [, count, counted, word, unit] = found ?? [];
  if (count && isKnown(counted!) && !isKnown(text)) return `${count}. ${counted!}`;
  return word && isKnown(word) && !isKnown(text) ? `${word} (${unit!})` : header;
}

/** For each language how many letters of a header are words of it. */
const lettersOf = remembered(
  (header: string) =>
    DICTIONARIES.map((dictionary) => {
      const words = partsOf(header).tokens.filter(({ text }) => dictionary.has(text));
      return words.reduce((sum, { text }) => sum + Math.min(text.length - 1, 6), 0);
    }),
  (header) => header,
);

/**
 * The languages of a sheet, the one of most words first: a word is looked up in them in this order, for
 * "no" and "date" are words of several.
 */
export function languagesOf(headers: readonly string[]): readonly Dictionary[] {
  const letters = DICTIONARIES.map(() => 0);
  for (const header of headers) {
    for (const [i, count] of lettersOf(header).entries()) letters[i]! += count;
  }
  const order = DICTIONARIES.map((_, i) => i).sort((a, b) => letters[b]! - letters[a]! || a - b);
  return order.map((i) => DICTIONARIES[i]!);
}

interface HeaderInSheet {
  readonly text: string;
  readonly languages: readonly Dictionary[];
}

const understood = remembered(
  ({ text, languages }: HeaderInSheet): UnderstoodHeader => {
    const { tokens, unit, onlyUnit } = partsOf(text);
    const all = withoutCondition(lettered(wordsAmong(tokens, languages), tokens, text));
    const timed = all.some(({ terms }) => terms.some((term) => TIMED.has(term)));
    const asksOnly = onlyUnit?.dimension === "yes-no";
    const isUnit = (timeUnit: string | undefined) =>
      timeUnit !== undefined && timed && (!unit?.dimension || unit.unit === timeUnit);
    const words = asksOnly ? [] : all.filter(({ timeUnit }) => !isUnit(timeUnit));
    const isWord = words.some(({ timeUnit }) => timeUnit !== undefined && timeUnit === unit?.unit);
    const own = tokens.filter(({ aside, timeUnit }) => !aside && !isUnit(timeUnit));
    const headed = languages.map((language) => language.fieldsHeaded(own));
    const isName = /^\s*\d+-\p{L}\s*$/u.test(text);
    const first = isName
      ? []
      : (headed.find((fields) => fields.length > 0) ?? cylindersInHeader(tokens));
    return { text, words, onlyUnit, unit: isWord ? undefined : unit, headed: first };
  },
  ({ text, languages }) => `${languages.map(({ language }) => language).join()} ${text}`,
);

/** "Reading A", "Alcohol B": a letter at the end numbers what stands before it; a small one, a reading. */
function lettered(words: readonly Word[], tokens: readonly Token[], header: string) {
  const letter = tokens.filter(({ aside }) => !aside).at(-1)?.text ?? "";
  const term = LETTERED[letter];
  if (!term || tokens.length < 2 || words.length === 0) return words;
  const isCapital = new RegExp(`(?<!\\p{L})${letter.toUpperCase()}(?!\\p{L})`, "u").test(header);
  if (!isCapital && !words.some(({ terms }) => terms.includes("reading"))) return words;
  const others = words.filter(({ text }) => text !== letter);
  return [...others, { text: letter, terms: [term], aside: false, misspelt: false }];
}

/** "Third reading (if the others differ)": when it is filled in says nothing of what it is. */
function withoutCondition(words: readonly Word[]): readonly Word[] {
  const at = words.findIndex(({ terms }) => terms.includes("condition"));
  if (at === 0) return words[0]!.terms.length > 1 ? words : words.slice(1);
  return at < 0 ? words : words.slice(0, at);
}

/** What the words of a header can mean in the languages of its sheet. */
export function understand(text: string, languages: readonly Dictionary[]): UnderstoodHeader {
  return understood({ text, languages });
}

function wordsAmong(tokens: readonly Token[], languages: readonly Dictionary[]): readonly Word[] {
  const texts = tokens.map(({ text }) => text);
  const words: Word[] = [];
  for (let at = 0; at < texts.length;) {
    const found = phraseAt(texts, at, languages);
    const { aside, timeUnit } = tokens[at]!;
    const length = found?.length ?? 1;
    const text = texts.slice(at, at + length).join(" ");
    at += length;
    if (found?.entry.instead) {
      const instead = found.entry.instead.map((long) => ({ text: long, aside }));
      words.push(...wordsAmong(instead, [found.language]));
    } else if (found) {
      // A word that says nothing is left out.
      const { terms } = found.entry;
      if (terms.length > 0) words.push({ text, terms, aside, misspelt: false, timeUnit });
    } else {
      const [language] = languages as [Dictionary];
      const meant = UNITS.has(text)
        ? undefined
        : (language.withoutVowels(text) ?? language.spelledRight(text) ?? language.cutShort(text));
      words.push({
        text,
        terms: meant?.terms ?? [],
        aside,
        misspelt: meant !== undefined,
        timeUnit,
      });
    }
  }
  return words;
}

function phraseAt(texts: readonly string[], at: number, languages: readonly Dictionary[]) {
  for (const language of languages) {
    const found = language.phraseAt(texts, at);
    if (found) return { ...found, language };
  }
  return undefined;
}
