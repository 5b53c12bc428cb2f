import type { Word } from "./dictionary";
import { guardOf, guardOfWord } from "./guards";
import type { FieldGrammar, Sense } from "./sense";
import type { Term } from "./terms";
import { explains, STRANGE_TITLE, titlePenalty } from "./title-penalty";
import type { Told } from "./told";

/** How surely a header says a field, and what is taken off, in hundredths of certainty. */
const SAID_BY: readonly number[] = [0, 74, 86, 92, 94];
const FROM_TITLE = 3;
const UNKNOWN_WORD = 12;
const MOST_FOR_UNKNOWN_WORDS = 30;
const UNKNOWN_ASIDE = 3;
const MISSPELT = 8;
const SLIGHT = 5;
const OTHER_MEANING = 34;
/** What says where it was measured is read where no other column says it plainly; two are asked about. */
const AT_A_PLACE = 62;

/** What says whose test it was is asked about: another party's may stand beside it. */
const OF_A_PARTY = 53;

/** Terms that add little to any quantity: that it was found, how high it stood, that it is the outcome. */
const SLIGHT_TERMS: ReadonlySet<Term> = new Set<Term>([
  "added",
  "amount",
  "left",
  "total",
  "result",
  "reported",
  "neck",
  "bowl",
  "extent",
]);

/** A field as the words of a header say it. */
export interface SaidSense {
  readonly score: number;
  /** Whether a yes says that all is in order. */
  readonly opposite: boolean;
  readonly sure: boolean;
  /** Whether nothing in the header says something else. */
  readonly outright: boolean;
  /** What words that are not known take off. */
  readonly unknown: number;
  readonly words: readonly string[];
  /** How many words say it. */
  readonly plain: number;
}

/**
 * The senses of a field that the header has, each with how far it says so.
 *
 * @param place Whether the field may stand under any title and beside any place.
 */
export function sensesIn(
  told: Told,
  grammar: FieldGrammar,
  place: "anywhere" | "in its place",
): SaidSense[] {
  return grammar.senses.flatMap(
    (sense) => saidSense(told, grammar, sense, place === "anywhere") ?? [],
  );
}

function saidSense(
  told: Told,
  grammar: FieldGrammar,
  sense: Sense,
  anywhere: boolean,
): SaidSense | undefined {
  const said = wordsThatSay(told, sense);
  const rest = said && besideThem(told, grammar, sense, said.taken, anywhere);
  if (!rest) return undefined;
  const title = titlePenalty(told, grammar, said.taken, anywhere);
  const full = sense.weight ?? SAID_BY[Math.min(sense.needs.length, 4)]!;
  const score = full - said.fromTitle * FROM_TITLE - rest.takenOff - title;
  const most = rest.ofAParty ? OF_A_PARTY : rest.atAPlace ? AT_A_PLACE : 100;
  return {
    score: Math.min(score, most),
    opposite: sense.opposite,
    sure: sense.sure && (rest.unknown < UNKNOWN_WORD || sense.needs.length > 1),
    outright: rest.outright && title < STRANGE_TITLE,
    unknown: rest.unknown,
    words: said.taken.map(({ text }) => text),
    plain: sense.needs.length,
  };
}

/** The words that say a sense, the column's own before those of its titles. */
function wordsThatSay({ own, titles, terms }: Told, { needs, ordered }: Sense) {
  if (!needs.every((group) => group.some((term) => terms.has(term)))) return undefined;
  const above = titles.flatMap(({ words }) => words);
  const taken: Word[] = [];
  let fromTitle = 0;
  for (const group of needs) {
    const has = (word: Word) =>
      !taken.includes(word) && word.terms.some((term) => group.includes(term));
    const inOwn = own.words.find(has);
    const word = inOwn ?? above.find(has);
    if (!word) return undefined;
    if (!inOwn) fromTitle++;
    taken.push(word);
  }
  if (fromTitle === needs.length) return undefined;
  const places = taken.map((word) => own.words.indexOf(word));
  if (ordered && places.some((place, i) => i > 0 && place < places[i - 1]!)) return undefined;
  return { taken, fromTitle };
}

/** What is done in the test itself, not to the load. */
const OF_THE_TEST: ReadonlySet<Term> = new Set<Term>([
  "roll",
  "inversion",
  "reading",
  "settle",
  "zero",
  "alcohol",
  "correction",
  "corrected",
]);

const PARTIES: ReadonlySet<string> = new Set(["person", "company"]);
const isParty = ({ terms }: Word) => !terms.includes("by") && PARTIES.has(guardOf(terms) ?? "");

const WAYS: ReadonlySet<string> = new Set(["place", "arrival", "departure"]);

/** What the other words of a header take off; `undefined` where one makes another thing of it. */
function besideThem(
  { own, cells }: Told,
  grammar: FieldGrammar,
  { needs }: Sense,
  taken: readonly Word[],
  anywhere: boolean,
) {
  // A number measured at a place may be the test's, or another's on the same row.
  const measuring = !anywhere && cells.number + cells.amount > 0.5;
  const isPlace = ({ terms }: Word) =>
    WAYS.has(guardOf(terms) ?? "") || (terms.length === 1 && terms[0] === "truck");
  const atAPlace = measuring && own.words.some((word) => !taken.includes(word) && isPlace(word));
  const from = grammar.again && measuring ? stageIn(own.words, taken) : Infinity;
  const ofAParty = measuring && own.words.some((word) => !taken.includes(word) && isParty(word));
  let takenOff = 0;
  let unknown = 0;
  let outright = true;
  for (const [at, word] of own.words.entries()) {
    const { terms, text, aside } = word;
    const guard = guardOfWord(word, at, own.words);
    if (at >= from) continue;
    if (word.misspelt) takenOff += MISSPELT;
    const isBy = terms.includes("by") && !guard;
    if (taken.includes(word) || isBy || explains(grammar, word, needs)) continue;
    if (atAPlace && (isPlace(word) || terms.some((t) => t === "before" || t === "after"))) continue;
    if (ofAParty && isParty(word)) continue;
    if (/^\d+$/.test(text) && (aside || terms.length === 0)) continue;
    if (terms.length === 0) {
      unknown += aside ? UNKNOWN_ASIDE : UNKNOWN_WORD;
      if (!aside && needs.length < 2) outright &&= cells.count > 0;
      continue;
    }
    if (guard) return undefined;
    const slight = terms.some((term) => SLIGHT_TERMS.has(term));
    takenOff += slight ? SLIGHT : OTHER_MEANING;
    outright &&= slight;
  }
  takenOff += Math.min(unknown, MOST_FOR_UNKNOWN_WORDS);
  return { takenOff, unknown, outright, atAPlace: atAPlace || from < Infinity, ofAParty };
}

/** Where a header goes on with what was done to the load before or after: "after water", "before pumping". */
function stageIn(words: readonly Word[], taken: readonly Word[]): number {
  const from = words.findIndex(({ terms }) => terms.includes("before") || terms.includes("after"));
  const acts = words.slice(from + 1);
  const isOfTheLoad =
    acts.length > 0 && acts.every(({ terms }) => !terms.some((t) => OF_THE_TEST.has(t)));
  return from > 0 && isOfTheLoad && !taken.some((word) => acts.includes(word)) ? from : Infinity;
}
