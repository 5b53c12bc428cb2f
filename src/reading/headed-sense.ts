import type { SaidSense } from "./said-sense";
import type { FieldGrammar } from "./sense";
import { explains, STRANGE_TITLE, titlePenalty } from "./title-penalty";
import type { Told } from "./told";

/** How surely a whole heading says a field, in hundredths of certainty. */
const HEADED = 96;
export const HEADED_IN_ONE_WORD = 88;
const ONE_WORD_UNDER_TITLE = 6;
const REMARK_IN_BRACKETS = 34;

/** A field that is headed with exactly its own words. */
export function headedSense(told: Told, grammar: FieldGrammar, anywhere: boolean): SaidSense {
  const { own } = told;
  const plain = own.words.filter(({ terms }) => terms[0] !== "share").length;
  const title = titlePenalty(told, grammar, own.words, anywhere);
  const oneWord = HEADED_IN_ONE_WORD - (told.titles.length > 0 ? ONE_WORD_UNDER_TITLE : 0);
  const aside = own.words.filter((word) => word.aside && !explains(grammar, word, [])).length;
  return {
    score: (plain > 1 ? HEADED : oneWord) - title - aside * REMARK_IN_BRACKETS,
    opposite: false,
    sure: true,
    unknown: 0,
    outright: title < STRANGE_TITLE && aside === 0,
    words: [own.text],
    plain,
  };
}
