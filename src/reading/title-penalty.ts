import type { Word } from "./dictionary";
import { GRAMMAR, LOOSE } from "./grammar";
import { BINDING, guardOf, PLAIN } from "./guards";
import type { FieldGrammar, Sense } from "./sense";
import type { Term } from "./terms";
import type { Told } from "./told";

/** What a title of another matter takes off, in hundredths of certainty. */
export const STRANGE_TITLE = 34;
const STRANGE_TITLE_OVER_PLAIN_WORD = 8;

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

/** Whether a word may stand beside what says the field. */
export function explains(grammar: FieldGrammar, word: Word, needs: Sense["needs"]): boolean {
  return word.terms.some(
    (term) =>
      LOOSE.has(term) || grammar.beside.has(term) || needs.some((group) => group.includes(term)),
  );
}

/** What the titles above take off: one that speaks of something else makes another thing of a column. */
export function titlePenalty(
  { titles }: Told,
  grammar: FieldGrammar,
  taken: readonly Word[],
  anywhere: boolean,
): number {
  const plain = taken.some(({ terms }) => terms.some((term) => PLAIN.has(term)));
  const said = grammar.senses.flatMap(({ needs }) => needs);
  // What the other meter found of the aggregate is true of this one.
  if (grammar === GRAMMAR.aggregateFactor) return 0;
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
