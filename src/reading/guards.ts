import type { Word } from "./dictionary";
import { GUARD_TERMS, type Guard, type Term } from "./terms";
import type { Told } from "./told";

/** Words that mean one thing whatever title they stand under. */
export const PLAIN: ReadonlySet<Term> = new Set<Term>([
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
export const BINDING: ReadonlySet<Term> = new Set<Term>([
  "other-test",
  "pressure",
  "strength",
  "statistics",
]);

/** The word that keeps a column from being ours, and what it speaks of. */
export interface GuardWord {
  readonly guard: Guard;
  readonly word: string;
}

/** A word is a guard where it can mean nothing else. */
export function guardOf(terms: readonly Term[]): Guard | undefined {
  const guards = terms.map((term) => GUARD_TERMS[term]);
  return guards.every((guard) => guard !== undefined) ? guards[0] : undefined;
}

/** The guard of a word of a header: "by" speaks of a person only where nothing follows it. */
export function guardOfWord(word: Word, at: number, words: readonly Word[]): Guard | undefined {
  const { terms, aside, misspelt } = word;
  // What a word was only meant to be is no reason to pass a column over.
  if (misspelt) return undefined;
  const isLast = words.slice(at + 1).every((word) => word.aside);
  return terms.includes("by") && (aside || !isLast) ? undefined : guardOf(terms);
}

/** The word in a header that keeps the column from being ours, as far as its cells bear it out. */
export function guardIn({ own, cells }: Told): GuardWord | undefined {
  for (const [at, word] of own.words.entries()) {
    const guard = guardOfWord(word, at, own.words);
    if (guard) return bearsOut(guard, cells) ? { guard, word: word.text } : undefined;
  }
  return undefined;
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
