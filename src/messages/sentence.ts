/**
 * A value of a sentence: a text, which is put in as it stands; a number, which is written with the
 * decimal mark in use; or words of the catalogue, which are said in the language in use.
 */
export type Value = string | number | Figure | Phrase;

/** A number that is written with so many decimals, zeros among them, and with its sign where asked. */
export interface Figure {
  readonly figure: number;
  readonly places: number;
  readonly signed?: true;
}

/** Words of the catalogue by their id, a whole sentence among others; or several values, all of them or one of them. */
export type Phrase =
  | { readonly say: string; readonly values?: Values; readonly whole?: true }
  | { readonly all: readonly Value[] }
  | { readonly either: readonly Value[] };

/** What a sentence is filled with, by name. */
export type Values<Name extends string = string> = Readonly<Record<Name, Value>>;

/** The same in words, as a sentence puts them in. */
export type Words<Name extends string = string> = Readonly<Record<Name, string>>;

/** Writes a number of the sentence itself, "0.25", with the decimal mark in use. */
export type WriteNumber = (number: string) => string;

/** A sentence: a text, or a function of its values. */
export type Sentence = string | ((words: never, written: WriteNumber) => string);

/** Sentences by id, in one language. */
export type Sentences = Readonly<Record<string, Sentence>>;

/** The same sentences in another language: none may be missing, and each takes the same values. */
export type SameSentences<S extends Sentences> = {
  readonly [Id in keyof S]: S[Id] extends (words: infer W, written: WriteNumber) => string
    ? ((words: W, written: WriteNumber) => string) | TextWhereNoValues<W>
    : string | ((words: Words<never>, written: WriteNumber) => string);
};

type TextWhereNoValues<W> = keyof W extends never ? string : never;

/** The same for what is no list of sentences by id. */
export type SameWords<T> = T extends (...given: infer Given) => string
  ? (...given: Given) => string
  : T extends string
    ? string
    : { readonly [Key in keyof T]: SameWords<T[Key]> };

/** The names of the values of a sentence; none for a text. */
type NamesIn<S> = S extends (words: infer W, written: WriteNumber) => string
  ? keyof W & string
  : never;

/** What has to be given beside the id of a sentence: its values, or nothing. */
export type ValuesFor<S extends Sentences, Id extends keyof S> = [NamesIn<S[Id]>] extends [never]
  ? []
  : [values: Values<NamesIn<S[Id]>>];

/**
 * The one place where a place and a sentence are joined: "Alcohol (oz): the cell is blank …".
 *
 * @param place The argument, the header or the label that the sentence is about; "" for none.
 */
export function joined(place: string, sentence: string): string {
  const whole = place === "" ? sentence : `${place}: ${sentence}`;
  return whole.charAt(0).toUpperCase() + whole.slice(1);
}

/** Fills a sentence with its values, which are in words already. */
export function filled(
  sentence: Sentence,
  words: Words,
  written: WriteNumber = (number) => number,
): string {
  return typeof sentence === "string" ? sentence : sentence(words as never, written);
}
