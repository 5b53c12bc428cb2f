import { DECIDING } from "./deciding";
import type { Evidence } from "./evidence";
import { FIELDS, READING_FIELDS, type FieldId } from "./fields";
import { fitOf } from "./fit";
import { GRAMMAR, mayHaveUnit, NOT_LOOSE } from "./grammar";
import { OTHER_MATTERS } from "./grammar/other-matters";
import { HEADED_IN_ONE_WORD, headedSense } from "./headed-sense";
import { sensesIn, type SaidSense } from "./said-sense";
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
const FITS = 6;
const DOES_NOT_FIT = 18;
const DOES_NOT_FIT_ONE_WORD = 40;
const DOES_NOT_FIT_AND_DECIDES_NOTHING = 60;
/** Below SURE: what is not said outright is asked. */
const NOT_OUTRIGHT = 52;

/** What small remarks in brackets take off. */
const MOST_UNKNOWN_IN_QUESTION = 6;

/** A word that is not known beside "reading" may say which of several it is, beside "date" of what. */
const PLAIN_ONLY: ReadonlySet<FieldId> = new Set<FieldId>(["final", "date"]);

/** What is written in figures: below "Initial" a person's letters are no reading. */
const IN_FIGURES: ReadonlySet<FieldId> = new Set<FieldId>(READING_FIELDS);

/** "Limit, min" over 90 is no air of 90 %: asked about, however many words say it. */
const LIMITS_OF_AIR: ReadonlySet<FieldId> = new Set<FieldId>(["low", "high", "target"]);

/** Fields that stand under any title. */
const ANYWHERE: ReadonlySet<FieldId> = new Set<FieldId>(["sample", "load", "date", "mix", "time"]);

const OF_THE_TEST: ReadonlySet<Term> = new Set<Term>(["meter", "volumetric", "reading", "roll"]);

/** Every field that a column may be, the likeliest first. */
export function candidatesFor(told: Told): readonly Candidate[] {
  const found = (Object.keys(FIELDS) as FieldId[]).flatMap(
    (field) => candidateFor(told, field) ?? [],
  );
  const alone = [minutesAlone(told) ?? [], densityAlone(told) ?? []].flat();
  return [...found, ...alone].sort((a, b) => b.score - a.score);
}

/** "Min" alone is the least, or minutes: a limit is the same in every row. */
function minutesAlone({ own, titles, cells, unit }: Told): Candidate | undefined {
  const isMin = own.onlyUnit?.unit === "min" && unit === undefined && titles.length === 0;
  if (!isMin || cells.distinct < 2 || fitOf("settle", cells) <= 0) return undefined;
  return { field: "settle", score: HEADED_IN_ONE_WORD, opposite: false, words: [own.text], fit: 1 };
}

/** "pcf" alone, or "kg/m³", over what fresh concrete weighs. */
function densityAlone({ own, titles, cells, unit }: Told): Candidate | undefined {
  const isUnit = own.onlyUnit?.dimension === "density" && titles.length === 0;
  if (!isUnit || fitOf("density", cells, unit) <= 0) return undefined;
  return {
    field: "density",
    score: HEADED_IN_ONE_WORD,
    opposite: false,
    words: [own.text],
    fit: 1,
  };
}

/** The likeliest of the things that are none of ours. */
export function otherMatterIn(told: Told): Candidate<Guard> | undefined {
  // What is numbered in words is no running number.
  const named = told.cells.text > 0.65;
  const matters = OTHER_MATTERS.filter(([guard]) => !(named && guard === "running number"));
  const found = matters.flatMap(([guard, grammar]) =>
    sensesIn(told, grammar, "anywhere")
      .filter(({ outright }) => outright)
      .map((sense) => ({
        ...sense,
        field: guard,
        fit: 0 as const,
      })),
  );
  return found.sort((a, b) => b.score - a.score)[0];
}

function candidateFor(told: Told, field: FieldId): Candidate | undefined {
  const grammar = GRAMMAR[field];
  const { own, unit, cells } = told;
  if (!mayHaveUnit(field, unit)) return undefined;
  const fit = fitOf(field, cells, unit);
  const anywhere = ANYWHERE.has(field);
  const senses = sensesIn(told, grammar, anywhere ? "anywhere" : "in its place");
  if (own.headed.includes(field)) senses.push(headedSense(told, grammar, anywhere));
  // A number answers no question.
  const isNumber = cells.number + cells.amount > 0.65;
  const said = senses.filter(({ opposite }) => !opposite || !isNumber);
  const best = said.sort((a, b) => b.score - a.score)[0];
  if (!best || best.score <= 0) return undefined;
  // "Do two readings agree?" is a question, and holds no reading.
  const isQuestion = IN_FIGURES.has(field) && cells.yesNo > 0.65 && !own.headed.includes(field);
  if (isQuestion && best.unknown > 0) return undefined;
  if (IN_FIGURES.has(field) && fit <= 0 && standsUnderTime(told)) return undefined;
  const mayBeAnothers = !own.headed.includes(field) && isAlsoAnothers(told, best);
  if (mayBeAnothers && fit < 0) return undefined;
  // Trucks wait as well as meters.
  const waits = field === "settle" && saysWait(told, best);
  const isUnderItsTest = waits && standsUnderTheTest(told);
  if (waits && !isUnderItsTest) return undefined;
  const strict = NOT_LOOSE[field];
  const otherwise =
    strict !== undefined && own.words.some(({ terms }) => terms.some((t) => strict.has(t)));
  const yesNoAsked = best.opposite && cells.yesNo > 0.65;
  const agreed = yesNoAsked ? 1 : fit;
  let score = best.score + (agreed > 0 ? FITS : 0);
  if (agreed < 0) score -= doesNotFit(field, best.plain, cells);
  const unsure = mayBeAnothers && !isUnderItsTest && (agreed === 0 || cells.whole > 0.9);
  const isPlain = !PLAIN_ONLY.has(field) || best.unknown === 0;
  // What is not known beside a question may turn it round: "lack of tightness".
  const isTurned = best.opposite && best.unknown > MOST_UNKNOWN_IN_QUESTION;
  const outright =
    best.outright && !otherwise && !unsure && isPlain && !isTurned && (best.sure || agreed > 0);
  if (!outright) score = Math.min(score, NOT_OUTRIGHT);
  return { field, score, opposite: best.opposite, words: best.words, fit: agreed };
}

/** Whether a word may as well be a guard, such as the level that is a storey. */
function isAlsoAnothers({ own }: Told, { words, plain }: SaidSense): boolean {
  const said = own.words.filter(({ text }) => words.includes(text));
  return plain === 1 && said.some(({ terms }) => terms.some((term) => GUARD_TERMS[term]));
}

function saysWait({ own }: Told, { words }: SaidSense): boolean {
  const said = own.words.filter(({ text }) => words.includes(text));
  return said.some(({ terms }) => terms.includes("settle") && terms.includes("other-matter"));
}

/** Whether the title right above says the time and nothing else: "Initial" below it is when one read. */
function standsUnderTime({ titles: [title] }: Told): boolean {
  const words = title?.words ?? [];
  return words.length > 0 && words.every(({ terms }) => terms.includes("time"));
}

/** Whether a title above is that of the volumetric test. */
function standsUnderTheTest({ titles }: Told): boolean {
  return titles.some(({ words }) =>
    words.some(({ terms }) => terms.some((term) => OF_THE_TEST.has(term))),
  );
}

function doesNotFit(field: FieldId, words: number, cells: Evidence): number {
  if (LIMITS_OF_AIR.has(field) && cells.number > 0.65) return DOES_NOT_FIT_ONE_WORD;
  if (words > 1) return DOES_NOT_FIT;
  const inWords = cells.text + cells.yesNo > 0.9;
  if (IN_FIGURES.has(field) && inWords) return DOES_NOT_FIT_AND_DECIDES_NOTHING;
  return DECIDING.has(field) ? DOES_NOT_FIT_ONE_WORD : DOES_NOT_FIT_AND_DECIDES_NOTHING;
}
