import type { Language } from "./language";
import {
  filled,
  joined,
  type Figure,
  type Phrase,
  type Sentences,
  type Value,
  type Values,
  type ValuesFor,
  type Words,
} from "./sentence";

/** How is spoken: in which language, and how a number is written. */
export interface Speech {
  readonly language: Language;
  readonly decimal: "." | ",";
}

interface Held {
  speech: Speech;
  /** Sentences of languages other than English, which every catalogue carries itself. */
  readonly learnt: Partial<Record<Language, Sentences>>;
}

/**
 * The one thing that is held here and not handed on: calculations, rules and hosts return ids and
 * values, and a page has one language. The scripts of a page share it: a language is one of its own, and
 * in the workbench the functions are, too.
 */
const held: Held = ((globalThis as { freshSpeech?: Held }).freshSpeech ??= {
  speech: { language: "en", decimal: "." },
  learnt: {},
});

/** How is spoken now. */
export function speech(): Speech {
  return held.speech;
}

/** Speaks otherwise from now on. What has been said stays as it was said. */
export function speak(change: Partial<Speech>): void {
  held.speech = { ...held.speech, ...change };
}

/** Adds the sentences of a language. One that is spoken and not learnt is said in English. */
export function learn(language: Language, sentences: Sentences): void {
  held.learnt[language] = sentences;
}

/** A number as it is written now. */
export function written(number: number | string): string {
  return held.speech.decimal === "," ? String(number).replace(".", ",") : String(number);
}

function figureText({ figure, places, signed }: Figure): string {
  const sign = figure < 0 ? "−" : signed ? "+" : "";
  return sign + Math.abs(figure).toFixed(places);
}

/** The ways to say the sentences of a catalogue in the language in use. */
export function speakerOf<Catalogue extends Sentences>(catalogue: Catalogue) {
  const sentence = (id: string, values: Values): string => {
    // Only what a sentence shows is put into words.
    const words = new Proxy(values, { get: (given, name: string) => inWords(given[name]!) });
    const said = held.learnt[held.speech.language]?.[id] ?? catalogue[id]!;
    return filled(said, words as unknown as Words, written);
  };
  const inWords = (value: Value): string => {
    if (typeof value === "number") return written(value);
    if (typeof value !== "object") return value;
    if ("figure" in value) return written(figureText(value));
    if ("say" in value) {
      const said = sentence(value.say, value.values ?? {});
      return value.whole ? joined("", said) : said;
    }
    const [conjunction, parts] =
      "all" in value ? ["list-all", value.all] : ["list-either", value.either];
    const several = parts.map(inWords);
    const last = several.pop() ?? "";
    return several.length === 0 ? last : sentence(conjunction, { first: several.join(", "), last });
  };
  return {
    /** The sentence of an id whose values were typed where it was made, after its place. */
    sentenceOf: (id: keyof Catalogue & string, values: Values, place = ""): string =>
      joined(place, sentence(id, values)),
    /** Fills a sentence. A missing value does not compile. */
    say: <Id extends keyof Catalogue & string>(
      id: Id,
      ...[values]: ValuesFor<Catalogue, Id>
    ): string => joined("", sentence(id, (values ?? {}) as Values)),
    /** The same where other words stand before it: it begins as it stands. */
    inLine: <Id extends keyof Catalogue & string>(
      id: Id,
      ...[values]: ValuesFor<Catalogue, Id>
    ): string => sentence(id, (values ?? {}) as Values),
    /** A value as a sentence puts it in. */
    inWords,
    /** Words of the catalogue for a sentence, which says them in the language in use. */
    phrase: <Id extends keyof Catalogue & string>(
      id: Id,
      ...[values]: ValuesFor<Catalogue, Id>
    ): Phrase => (values ? { say: id, values } : { say: id }),
  };
}
