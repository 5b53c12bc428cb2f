import type { FieldId } from "../fields";
import type { Term } from "../terms";

/** Words of one language, data only: lists are set off by commas, in lower case. */
export interface Vocabulary {
  readonly language: "en" | "es" | "fr" | "de";
  /** Whole headings of a field, the plainest first. */
  readonly headings: Readonly<Partial<Record<FieldId, string>>>;
  /** Words and phrases by what they mean. One that stands under several terms may mean any of them. */
  readonly words: Readonly<Partial<Record<Term, string>>>;
  /** Words with their short forms: "long = short, shorter". */
  readonly shortForms: readonly string[];
  /** Words that say nothing about what a column holds, set off by spaces. */
  readonly empty: string;
  /** What may be taken off the end of a word, such as the mark of the plural. */
  readonly endings: readonly string[];
}
