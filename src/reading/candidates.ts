import { DECIDING } from "./deciding";
import type { Word } from "./dictionary";
import { FIELDS, type FieldId } from "./fields";
import { fitOf } from "./fit";
import {
  GRAMMAR,
  LOOSE,
  mayHaveUnit,
  NOT_LOOSE,
  OTHER_MATTERS,
  type FieldGrammar,
  type Sense,
} from "./grammar";
import { GUARD_TERMS, type Guard, type Term } from "./terms";
import type { Told } from "./told";

/** Something that a column may be. */
export interface Candidate<Kind = FieldId> {
  readonly field: Kind;
  readonly score: number;
  /** Whether a yes says that all is in order. */
  readonly opposite: boolean;
  /** The words that say so. */
  readonly words: readonly string[];
  /** Whether the cells speak for it, against it, or not at all. */
  readonly fit: -1 | 0 | 1;
}

/** From here on a column is read as the field. */
export const SURE = 60;
/** From here on a column is asked about. */
export const THINKABLE = 30;

/** What is taken off, and given, in hundredths of certainty. */
const HEADED = 96;
const HEADED_IN_ONE_WORD = 88;
const ONE_WORD_UNDER_TITLE = 6;
const SAID_BY: readonly number[] = [0, 74, 86, 92, 94];
const FROM_TITLE = 3;
const UNKNOWN_WORD = 12;
const MOST_FOR_UNKNOWN_WORDS = 30;
const UNKNOWN_ASIDE = 3;
const MISSPELT = 8;
const OTHER_MEANING = 34;
const STRANGE_TITLE = 34;
const STRANGE_TITLE_OVER_PLAIN_WORD = 8;
const FITS = 6;
const DOES_NOT_FIT = 18;
const DOES_NOT_FIT_ONE_WORD = 40;
const DOES_NOT_FIT_AND_DECIDES_NOTHING = 60;
/** Below SURE: what is not said outright is asked. */
const NOT_OUTRIGHT = 52;

/** Words that mean one thing whatever title they stand under. */
const PLAIN: ReadonlySet<Term> = new Set<Term>([
  "alcohol",
  "foam",
  "cup",
  "packed",
  "inversion",
  "roll",
  "slump",
  "humidity",
  "wind",
]);
/** Titles of these turn everything below them into their own. */
const BINDING: ReadonlySet<Term> = new Set<Term>([
  "other-test",
  "pressure",
  "strength",
  "statistics",
]);
/** Titles that may stand over any test. */
const LOOSE_TITLES: ReadonlySet<Term> = new Set<Term>([
  ...LOOSE,
  "air",
  "content",
  "sample",
  "method",
  "number",
  "measured",
  "result",
  "reading",
  "meter",
  "time",
  "date",
]);
/** Fields that stand under any title. */
const ANYWHERE: ReadonlySet<FieldId> = new Set<FieldId>(["sample", "load", "date", "mix", "time"]);

/** Every field that a column may be, the likeliest first. */
export function candidatesFor(told: Told): readonly Candidate[] {
  const found = (Object.keys(FIELDS) as FieldId[]).flatMap(
    (field) => candidateFor(told, field) ?? [],
  );
  const minutes = minutesAlone(told);
  return (minutes ? [...found, minutes] : found).sort((a, b) => b.score - a.score);
}

/** "Min" alone is the least, or minutes: a limit is the same in every row. */
function minutesAlone({ own, titles, cells, unit }: Told): Candidate | undefined {
  const isMin = own.onlyUnit?.unit === "min" && unit === undefined && titles.length === 0;
  if (!isMin || cells.distinct < 2 || fitOf("settle", cells) <= 0) return undefined;
  return { field: "settle", score: HEADED_IN_ONE_WORD, opposite: false, words: [own.text], fit: 1 };
}

/** The likeliest of the things that are none of ours. */
export function otherMatterIn(told: Told): Candidate<Guard> | undefined {
  // What is numbered in words is no running number.
  const named = told.cells.text > 0.65;
  const matters = OTHER_MATTERS.filter(([guard]) => !(named && guard === "running number"));
  const found = matters.flatMap(([guard, grammar]) =>
    bestSense(told, grammar, "anywhere")
      .filter(({ outright }) => outright)
      .map((sense) => ({
        ...sense,
        field: guard,
        fit: 0 as const,
      })),
  );
  return found.sort((a, b) => b.score - a.score)[0];
}

/** The word that keeps a column from being ours, and what it speaks of. */
export interface GuardWord {
  readonly guard: Guard;
  readonly word: string;
}

/** The word in a header that keeps the column from being ours, as far as its cells bear it out. */
export function guardIn({ own, cells }: Told): GuardWord | undefined {
  const found = own.words.find(({ terms }) => guardOf(terms) !== undefined);
  const guard = found && guardOf(found.terms)!;
  return guard && bearsOut(guard, cells) ? { guard, word: found.text } : undefined;
}

/** The title that turns what stands below it into another test's. */
export function bindingTitle({ own, titles }: Told): GuardWord | undefined {
  if (own.words.some(({ terms }) => terms.some((term) => PLAIN.has(term)))) return undefined;
  const found = titles
    .flatMap(({ words }) => words)
    .find(({ terms }) => terms.length > 0 && terms.every((term) => BINDING.has(term)));
  return found && { guard: guardOf(found.terms)!, word: found.text };
}

/** Whether the cells may be what the guard says: a way has its times, a person a name. */
function bearsOut(guard: Guard, cells: Told["cells"]): boolean {
  if (cells.count === 0) return true;
  if (guard === "arrival" || guard === "departure") return cells.clock + cells.date > 0.5;
  return guard !== "person" || cells.number + cells.amount < 0.5 || cells.most > 15;
}

function candidateFor(told: Told, field: FieldId): Candidate | undefined {
  const grammar = GRAMMAR[field];
  const { own, unit, cells } = told;
  if (!mayHaveUnit(field, unit)) return undefined;
  const fit = fitOf(field, cells, unit);
  const senses = bestSense(told, grammar, ANYWHERE.has(field) ? "anywhere" : "in its place");
  if (own.headed.includes(field)) senses.push(headedSense(told, grammar, field));
  const best = senses.sort((a, b) => b.score - a.score)[0];
  if (!best || best.score <= 0) return undefined;
  const strict = NOT_LOOSE[field];
  const otherwise =
    strict !== undefined && own.words.some(({ terms }) => terms.some((t) => strict.has(t)));
  const yesNoAsked = best.opposite && cells.yesNo > 0.65;
  const agreed = yesNoAsked ? 1 : fit;
  let score = best.score + (agreed > 0 ? FITS : 0);
  if (agreed < 0) score -= doesNotFit(field, best.plain);
  const outright = best.outright && !otherwise && (best.sure || agreed > 0);
  if (!outright) score = Math.min(score, NOT_OUTRIGHT);
  return { field, score, opposite: best.opposite, words: best.words, fit: agreed };
}

function doesNotFit(field: FieldId, words: number): number {
  if (words > 1) return DOES_NOT_FIT;
  return DECIDING.has(field) ? DOES_NOT_FIT_ONE_WORD : DOES_NOT_FIT_AND_DECIDES_NOTHING;
}

interface SaidSense {
  score: number;
  readonly opposite: boolean;
  readonly sure: boolean;
  /** Whether nothing in the header says something else. */
  readonly outright: boolean;
  readonly words: readonly string[];
  /** How many words say it. */
  readonly plain: number;
}

function headedSense(told: Told, grammar: FieldGrammar, field: FieldId): SaidSense {
  const { own } = told;
  const plain = own.words.filter(({ terms }) => terms[0] !== "share").length;
  const title = titlePenalty(told, grammar, own.words, ANYWHERE.has(field));
  const oneWord = HEADED_IN_ONE_WORD - (told.titles.length > 0 ? ONE_WORD_UNDER_TITLE : 0);
  const aside = own.words.filter((word) => word.aside && !explains(grammar, word, [])).length;
  return {
    score: (plain > 1 ? HEADED : oneWord) - title - aside * OTHER_MEANING,
    opposite: false,
    sure: true,
    outright: title < STRANGE_TITLE && aside === 0,
    words: [own.text],
    plain,
  };
}

/** The senses of a field that the header has, each with how far it says so. */
function bestSense(
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
  if (!sense.needs.every((group) => group.some((term) => told.terms.has(term)))) return undefined;
  const { own, titles } = told;
  // A number measured at a place may be the test's, or another's on the same row.
  const measuring = !anywhere && told.cells.number + told.cells.amount > 0.5;
  const above = titles.flatMap(({ words }) => words);
  const taken: Word[] = [];
  let fromTitle = 0;
  for (const group of sense.needs) {
    const has = (word: Word) =>
      !taken.includes(word) && word.terms.some((term) => group.includes(term));
    const inOwn = own.words.find(has);
    const word = inOwn ?? above.find(has);
    if (!word) return undefined;
    if (!inOwn) fromTitle++;
    taken.push(word);
  }
  if (fromTitle === sense.needs.length) return undefined;
  const isPlace = ({ terms }: Word) => guardOf(terms) === "place";
  const nearPlace = measuring && own.words.some(isPlace);
  const places = taken.map((word) => own.words.indexOf(word));
  if (sense.ordered && places.some((place, i) => i > 0 && place < places[i - 1]!)) return undefined;
  let score = (sense.weight ?? SAID_BY[Math.min(sense.needs.length, 4)]!) - fromTitle * FROM_TITLE;
  let outright = true;
  let elsewhere = false;
  let unknown = 0;
  for (const word of own.words) {
    if (word.misspelt) score -= MISSPELT;
    if (taken.includes(word) || explains(grammar, word, sense.needs)) continue;
    if (nearPlace && word.terms.some((term) => term === "before" || term === "after")) continue;
    if (word.aside && /^\d+$/.test(word.text)) continue;
    if (word.terms.length === 0) {
      if (/^\d+$/.test(word.text)) continue;
      unknown += word.aside ? UNKNOWN_ASIDE : UNKNOWN_WORD;
      if (!word.aside && sense.needs.length < 2) outright &&= told.cells.count > 0;
      continue;
    }
    const guard = guardOf(word.terms);
    if (guard && !(guard === "place" && measuring)) return undefined;
    // Where on its way it was measured is one thing, however many words say it.
    if (!elsewhere || !guard) score -= OTHER_MEANING;
    elsewhere ||= guard === "place";
    outright = false;
  }
  score -= Math.min(unknown, MOST_FOR_UNKNOWN_WORDS);
  const title = titlePenalty(told, grammar, taken, anywhere);
  score -= title;
  if (title >= STRANGE_TITLE) outright = false;
  const words = taken.map(({ text }) => text);
  const sure = sense.sure && (unknown < UNKNOWN_WORD || sense.needs.length > 1);
  return { score, opposite: sense.opposite, sure, outright, words, plain: sense.needs.length };
}

/** Whether a word may stand beside what says the field. */
function explains(grammar: FieldGrammar, word: Word, needs: Sense["needs"]): boolean {
  return word.terms.some(
    (term) =>
      LOOSE.has(term) || grammar.beside.has(term) || needs.some((group) => group.includes(term)),
  );
}

/** What the titles above take off: one that speaks of something else makes another thing of a column. */
function titlePenalty(
  { titles }: Told,
  grammar: FieldGrammar,
  taken: readonly Word[],
  anywhere: boolean,
): number {
  const plain = taken.some(({ terms }) => terms.some((term) => PLAIN.has(term)));
  const said = grammar.senses.flatMap(({ needs }) => needs);
  let most = 0;
  for (const word of titles.flatMap(({ words }) => words)) {
    const { terms } = word;
    if (terms.length === 0 || taken.includes(word)) continue;
    const own = explains(grammar, word, said) || terms.some((term) => LOOSE_TITLES.has(term));
    if (own) continue;
    const binding = terms.every((term) => BINDING.has(term));
    const light = plain || (!binding && (anywhere || guardOf(terms) !== undefined));
    most = Math.max(most, light ? STRANGE_TITLE_OVER_PLAIN_WORD : binding ? 100 : STRANGE_TITLE);
  }
  return most;
}

/** A word is a guard where it can mean nothing else. */
function guardOf(terms: readonly Term[]): Guard | undefined {
  const guards = terms.map((term) => GUARD_TERMS[term]);
  return guards.every((guard) => guard !== undefined) ? guards[0] : undefined;
}
