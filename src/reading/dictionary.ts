import type { FieldId } from "./fields";
import { GUARD_TERMS, type Term } from "./terms";
import { wordsOf } from "./tokens";
import type { Token } from "./units-in-header";
import type { Vocabulary } from "./vocabulary/vocabulary";

/** A word or phrase of a header with what it can mean; an unknown word means nothing. */
export interface Word {
  readonly text: string;
  /** Each a meaning that it can have. */
  readonly terms: readonly Term[];
  readonly aside: boolean;
  /** Whether it is a known word only when a letter is put right. */
  readonly misspelt: boolean;
  readonly timeUnit?: string;
}

/** What a span of tokens was found to be. */
interface Entry {
  readonly terms: readonly Term[];
  /** Words that it stands for, where it is a short form or a compound. */
  readonly instead?: readonly string[];
}

const LONGEST_PHRASE = 5;
const LONG_ENOUGH_TO_CUT = 4;
/** Other languages than German put two words together, in names of columns only: "unitweight". */
const SHORTEST_PART = 3;
const ENDS: ReadonlySet<string> = new Set(["no", "id", "nr", "pct", "yn"]);
/** Shorter words differ from others by a letter too often. */
const LONG_ENOUGH_TO_MISSPELL = 7;
/** Of these only letters swapped, doubled or left out are put right: another letter makes another word. */
const LONG_ENOUGH_TO_SLIP = 5;
/** Names of columns leave the vowels out: "STRT", "MTHD"; from five letters on the end as well. */
const LONG_ENOUGH_WITHOUT_VOWELS = 4;
const LINKS = new Set(["s", "es", "n", "en", "e", "er"]);
const NOTHING: Entry = { terms: [] };

/** The words of one language, ready to be looked up. */
export class Dictionary {
  readonly language: Vocabulary["language"];
  private readonly entries = new Map<string, Entry>();
  /** By the words as they are written in the vocabulary, which go before those of one stem. */
  private readonly exact = new Map<string, Entry>();
  private readonly shortForms = new Map<string, readonly string[]>();
  private readonly headings = new Map<string, FieldId[]>();
  private readonly singleWords: string[];
  private readonly compounds = new Map<string, readonly string[] | null>();

  constructor(private readonly vocabulary: Vocabulary) {
    this.language = vocabulary.language;
    for (const [term, list] of Object.entries(vocabulary.words)) {
      for (const phrase of list.split(",")) this.addPhrase(phrase, term as Term);
    }
    for (const word of vocabulary.empty.split(/\s+/)) {
      const key = this.keyOf(wordsOf(word));
      if (!this.entries.has(key)) this.entries.set(key, NOTHING);
    }
    for (const line of vocabulary.shortForms) {
      const [long, forms] = line.split("=") as [string, string];
      for (const form of forms.split(","))
        this.shortForms.set(wordsOf(form).join(" "), wordsOf(long));
    }
    for (const [field, list] of Object.entries(vocabulary.headings)) {
      for (const heading of list.split(",")) {
        const words = wordsOf(heading);
        const keys = new Set([this.keyOf(words), this.keyOf(withoutLinks(words))]);
        for (const key of keys) push(this.headings, key, field as FieldId);
      }
    }
    this.singleWords = [...this.entries.keys()].filter((key) => !key.includes(" "));
  }

  /** The fields that are headed with exactly these words. */
  fieldsHeaded(tokens: readonly Token[]): readonly FieldId[] {
    const texts = tokens.map(({ text }) => text);
    const long = texts.flatMap((text) => this.shortForms.get(text) ?? [text]);
    // "Initials" are a person's, though "initial" heads a reading.
    const exact = this.exact.get(texts.join(" "))?.terms ?? [];
    if (exact.length > 0 && exact.every((term) => term === "person")) return [];
    const headed = this.headings.get(this.keyOf(texts)) ?? this.headings.get(this.keyOf(long));
    return headed ?? this.headings.get(this.keyOf(withoutLinks(long))) ?? [];
  }

  /** Whether the language has the word, be it one that says nothing. */
  has(text: string): boolean {
    return this.shortForms.has(text) || this.entries.has(this.stem(text));
  }

  /**
   * The longest phrase that begins at a place.
   *
   * @returns What it is and how many tokens it takes; `undefined` where the language has no such word.
   */
  phraseAt(
    texts: readonly string[],
    at: number,
  ): { readonly entry: Entry; readonly length: number } | undefined {
    for (let length = Math.min(LONGEST_PHRASE, texts.length - at); length > 0; length--) {
      const span = texts.slice(at, at + length);
      const long = span.flatMap((text) => this.shortForms.get(text) ?? [text]);
      const entry =
        this.exact.get(span.join(" ")) ??
        this.exact.get(long.join(" ")) ??
        this.entries.get(this.keyOf(long)) ??
        this.entries.get(this.keyOf(span));
      if (entry) return { entry, length };
    }
    const long = this.shortForms.get(texts[at]!) ?? this.partsOf(texts[at]!);
    return long && { entry: { terms: [], instead: long }, length: 1 };
  }

  /** The word that an unknown one was meant to be: the only one that differs by one letter. */
  spelledRight(text: string): Entry | undefined {
    if (text.length < LONG_ENOUGH_TO_SLIP) return undefined;
    const stem = this.stem(text);
    const near = this.singleWords.filter(
      (word) =>
        word[0] === stem[0] && Math.abs(word.length - stem.length) < 2 && nearly(word, stem),
    );
    const [only] = near;
    if (text.length < LONG_ENOUGH_TO_MISSPELL) {
      // "Pint" is no "point" where that would say that a column is none of ours.
      const isOne = near.length === 1 && only!.length > 3 && isSlip(only!, stem);
      return isOne ? this.commonTo([this.entries.get(only!)!]) : undefined;
    }
    if (near.length === 1) return this.entries.get(only!);
    const likelier = near.filter((word) => word.length <= stem.length && isSlip(word, stem));
    return likelier.length === 1 ? this.entries.get(likelier[0]!) : undefined;
  }

  /** What a word of which only the consonants are written means, where all words with these mean it. */
  withoutVowels(text: string): Entry | undefined {
    if (text.length < LONG_ENOUGH_WITHOUT_VOWELS || /[aeiou\d]/.test(text.slice(1)))
      return undefined;
    const whole = this.singleWords.filter((word) => {
      const left = word[0]! + word.slice(1).replace(/[aeiou]/g, "");
      return word !== text && (left === text || (text.length > 4 && left.startsWith(text)));
    });
    return this.commonTo(whole.map((word) => this.entries.get(word)!));
  }

  /** What a word that was cut short means, where all words that begin so mean it: "stabil.". */
  cutShort(text: string, shortest = LONG_ENOUGH_TO_CUT): Entry | undefined {
    return this.commonTo(text.length < shortest ? [] : this.beginningWith(text));
  }

  /** What all of some words mean, as far as it is no guard. */
  private commonTo(whole: readonly Entry[]): Entry | undefined {
    const terms = whole.reduce<readonly Term[]>(
      (common, word, i) =>
        i === 0 ? word.terms : common.filter((term) => word.terms.includes(term)),
      [],
    );
    const own = terms.filter((term) => GUARD_TERMS[term] === undefined);
    return own.length > 0 ? { terms: own } : undefined;
  }

  private beginningWith(text: string): readonly Entry[] {
    if (/\d/.test(text)) return [];
    return this.singleWords
      .filter((word) => word.startsWith(text))
      .map((word) => this.entries.get(word)!);
  }

  /** The known words that a long word is put together from. */
  private partsOf(text: string): readonly string[] | undefined {
    if (text.length < 5 || /\d/.test(text)) return undefined;
    let parts = this.compounds.get(text);
    if (parts === undefined) {
      const found = this.split(text, text.length);
      const hasWord =
        found?.some(({ length }) => length > SHORTEST_PART) || ENDS.has(found?.at(-1) ?? "");
      const isName = hasWord && (this.language === "de" || (found?.length ?? 0) < 3);
      parts = (isName ? found : undefined) ?? this.splitCutShort(text) ?? null;
      this.compounds.set(text, parts);
    }
    return parts ?? undefined;
  }

  /** Longest first part first. A link such as the s of German compounds stands between two parts. */
  private split(text: string, longest: number): readonly string[] | undefined {
    for (let end = Math.min(text.length, longest); end > 1; end--) {
      const part = text.slice(0, end);
      const isLast = end === text.length;
      const known = end > 2 || isLast ? this.isPart(part, isLast) : false;
      if (!known) continue;
      const rest = text.slice(end);
      if (rest === "") return [part];
      for (const link of this.language === "de" ? ["", ...LINKS] : [""]) {
        if (!rest.startsWith(link) || rest === link) continue;
        const others = this.split(rest.slice(link.length), rest.length);
        if (others) return [part, ...others];
      }
    }
    return undefined;
  }

  /** A compound whose last word was cut short: "Luftgeh.". */
  private splitCutShort(text: string): readonly string[] | undefined {
    if (this.language !== "de") return undefined;
    for (let end = text.length - 3; end > 3; end--) {
      const [head, tail] = [text.slice(0, end), text.slice(end)];
      const whole = this.isPart(head, false) && this.singleWords.find((w) => w.startsWith(tail));
      if (whole && this.cutShort(tail, 3)) return [head, whole];
    }
    return undefined;
  }

  private isPart(part: string, isLast: boolean): boolean {
    const isEnd = isLast && ENDS.has(part);
    if (this.language !== "de" && !isEnd) {
      // A guess is no reason to pass a column over.
      const terms = this.entries.get(this.stem(part))?.terms ?? [];
      const isGuard = terms.length > 0 && terms.every((term) => GUARD_TERMS[term] !== undefined);
      if (part.length < SHORTEST_PART || isGuard) return false;
    }
    // Two letters at the end are an ending or nothing: no compound ends in a short form of them.
    if (part.length < 3 && !isEnd) return false;
    return this.shortForms.has(part) || (this.entries.get(this.stem(part))?.terms.length ?? 0) > 0;
  }

  private addPhrase(phrase: string, term: Term): void {
    const words = wordsOf(phrase.trim());
    if (words.length === 0) return;
    for (const [entries, key] of [
      [this.entries, this.keyOf(words)],
      [this.exact, words.join(" ")],
    ] as const) {
      const { terms } = entries.get(key) ?? NOTHING;
      if (!terms.includes(term)) entries.set(key, { terms: [...terms, term] });
    }
  }

  private keyOf(words: readonly string[]): string {
    return words.map((word) => this.stem(word)).join(" ");
  }

  private stem(written: string): string {
    // Where there are no dots over a letter, an e stands behind it.
    const word = this.language === "de" ? written.replace(/([aou])e/g, "$1") : written;
    const ending = this.vocabulary.endings.find(
      (each) => word.endsWith(each) && word.length - each.length >= 3 && !word.endsWith("ss"),
    );
    return ending === undefined ? word : this.stem(word.slice(0, -ending.length));
  }
}

/** "Nombre de cylindres" is as well "nombre cylindres": the small words between others are left out. */
const BETWEEN: ReadonlySet<string> = new Set(
  "of the de du des d del la el le les los der".split(" "),
);

function withoutLinks(words: readonly string[]): readonly string[] {
  return words.filter((word, at) => at === 0 || at === words.length - 1 || !BETWEEN.has(word));
}

/** Whether two words differ by one letter put in, left out or changed, or by two letters swapped. */
function nearly(one: string, two: string): boolean {
  let from = 0;
  while (from < one.length && one[from] === two[from]) from++;
  let back = 0;
  while (
    back < Math.min(one.length, two.length) - from &&
    one[one.length - 1 - back] === two[two.length - 1 - back]
  )
    back++;
  const left = one.slice(from, one.length - back);
  const right = two.slice(from, two.length - back);
  if (left.length <= 1 && right.length <= 1) return true;
  return left.length === 2 && right.length === 2 && left[0] === right[1] && left[1] === right[0];
}

/** Whether two letters were swapped, or one was doubled or left out: "smaple", "luftgehallt", "alcol". */
function isSlip(meant: string, written: string): boolean {
  if (meant.length === written.length)
    return [...meant].sort().join() === [...written].sort().join();
  if (meant.length > written.length) return true;
  return [...written].some(
    (letter, at) =>
      letter === written[at - 1] && written.slice(0, at) + written.slice(at + 1) === meant,
  );
}

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  map.set(key, [...(map.get(key) ?? []), value]);
}
