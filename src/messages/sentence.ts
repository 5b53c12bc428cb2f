/** A value in a sentence. */
export type Word = string | number;

/** The values of a sentence, by name. */
export type Words<Name extends string = string> = Readonly<Record<Name, Word>>;

/** A sentence: a text, or a function of its values. */
export type Sentence = string | ((values: never) => string);

/** Sentences by id, in one language. */
export type Sentences = Readonly<Record<string, Sentence>>;

/** The same sentences in another language: none may be missing, and each takes the same values. */
export type SameSentences<S extends Sentences> = {
  readonly [Id in keyof S]: S[Id] extends (values: infer V) => string
    ? (values: V) => string
    : string;
};

/** What has to be given beside the id of a sentence: its values, or nothing. */
export type ValuesFor<S extends Sentences, Id extends keyof S> = [
  Extract<S[Id], (values: never) => string>,
] extends [never]
  ? []
  : Extract<S[Id], (values: never) => string> extends (values: infer V) => string
    ? [values: V]
    : never;

/**
 * The one place where a place and a sentence are joined: "Alcohol (oz): the cell is blank …".
 *
 * @param place The argument, the header or the label that the sentence is about; "" for none.
 */
export function joined(place: string, sentence: string): string {
  const whole = place === "" ? sentence : `${place}: ${sentence}`;
  return whole.charAt(0).toUpperCase() + whole.slice(1);
}

/** Fills a sentence with its values. */
export function filled(sentence: Sentence, values: Words): string {
  return typeof sentence === "string" ? sentence : sentence(values as never);
}
