import { folded } from "../measure/folded";

/** What a text says of the tests of a table. */
export interface TestsNamed {
  /** The rows of those that it names beyond doubt: "Load 4", "loads 4 to 6", "#4". */
  readonly rows: ReadonlySet<number>;
  /** Whether it may be of tests that it does not name so: "4", "the last two". */
  readonly isOpen: boolean;
  /** The text without the names and what calls them so. */
  readonly rest: string;
}

interface Word {
  readonly text: string;
  readonly isNumber: boolean;
  /** What stands between the word before and this one. */
  readonly before: string;
  readonly from: number;
  readonly to: number;
}

/** No name has more words. */
const LONGEST_NAME = 8;
/** A text is looked at so far. */
const LONGEST_TEXT = 1000;
/** A shorter word alone may be any: "a", "12". */
const SHORTEST_ALONE = 3;

/** The number behind one of these is that of a test. */
const CALLS =
  /^(?:test|load|sample|truck|tk|ticket|set|pier|lot|lab|no|nr|num\w*|prueba|ensayo|muestra|carga|camion\w*|boleta|remision|lote|pila|essai|echantillon|charge|toupie|bon|prufung\w*|versuch\w*|probe\w*|ladung\w*|fahrzeug\w*|wagen|mischer|schein\w*)$/;
const LIST = /^(?:and|y|e|et|und|u|or|o|ou|oder|no|nr)$/;
const RANGE = /^(?:to|thru|through|a|al|hasta|au|bis)$/;
const SIGN_OF_RANGE = /^\s*[-–—]\s*#?$/;
/** What a number counts or measures where it stands before one of these. */
const MEASURED =
  /^(?:div\w*|mark\w*|line\w*|grad\w*|raya\w*|strich\w*|teil\w*|min\w*|sec\w*|seg\w*|sek\w*|h|hours?|hrs?|am|pm|uhr|pts?|pints?|pintas?|oz|ml|cc|l|lt|liter\w*|litro\w*|litre\w*|cups?|copas?|vasos?|tazas?|becher|godets?|times?|ve(?:z|ces)|fois|mal|x|in|cm|mm|percent|pct|f|c|psi|mpa)$/;
/** Tests that a text calls by no name. */
const OTHERS =
  /^(?:all|every|each|both|these|those|last|first|next|following|previous|below|todos|todas|cada|ambos|ambas|ultim[oa]|primer[oa]?|siguiente|anterior|tou|tous|toute|chaque|derniere?|premiere?|suivante?|alle|beide|letzten?|ersten?|nachsten?|folgenden?)$/;

/**
 * Finds the tests of a table by their names in a text.
 *
 * @param names The rows of the tests and what each is called.
 */
export function testsNamedBy(
  names: Iterable<readonly [row: number, name: string]>,
): (text: string) => TestsNamed {
  const byName = new Map<string, number[]>();
  const byNumber = new Map<string, number[]>();
  for (const [row, name] of names) {
    const words = wordsOf(name).slice(0, LONGEST_NAME);
    add(byName, keyOf(words), row);
    add(byNumber, words.filter(({ isNumber }) => isNumber).at(-1)?.text ?? "", row);
  }
  byName.delete("");
  byNumber.delete("");
  return (text) => namedIn(text, byName, byNumber);
}

type Rows = ReadonlyMap<string, readonly number[]>;

function namedIn(text: string, byName: Rows, byNumber: Rows): TestsNamed {
  const written = folded(text.slice(0, LONGEST_TEXT));
  const words = wordsOf(written);
  const rows = new Set<number>();
  let isOpen = words.some((word) => OTHERS.test(word.text));
  let rest = written;
  let last:
    { readonly row: number; readonly prefix: readonly Word[]; readonly end: number } | undefined;
  for (let at = 0; at < words.length;) {
    const word = words[at]!;
    const goesOn = last !== undefined && joins(words, last.end, at, /^[\s,;/&+#]*[-–—]?\s*#?$/);
    const length = lengthOfName(words, at, byName);
    const prefix = goesOn ? last!.prefix : [];
    const found =
      byName.get(keyOf(words.slice(at, at + length))) ??
      (word.isNumber && !isMeasured(words, at, goesOn)
        ? (byName.get(keyOf([...prefix, word])) ?? byNumber.get(word.text) ?? [])
        : undefined);
    const next = at + Math.max(length, 1);
    const call = CALLS.test(words[at - 1]?.text ?? "") ? words[at - 1] : undefined;
    const isCalled = call !== undefined || /#\s*$/.test(word.before);
    const isFirst = word.isNumber && at === 0;
    const isLong = length > 1 || (length === 1 && word.text.length >= SHORTEST_ALONE);
    if (found && found.length > 0 && (isLong || isCalled || isFirst || goesOn)) {
      if (goesOn && isRange(words, last!.end, at))
        for (let row = last!.row; row < found[0]!; row++) rows.add(row);
      for (const row of found) rows.add(row);
      const from = goesOn ? words[last!.end - 1]!.to : (call ?? word).from;
      rest = blanked(rest, from, words[next - 1]!.to);
      const own = length > 1 ? words.slice(at, next - 1) : prefix;
      last = { row: found.at(-1)!, prefix: own, end: next };
    } else isOpen ||= found !== undefined;
    at = next;
  }
  return { rows, isOpen, rest };
}

/** How many words the longest name has that begins here; 0 where none does. */
function lengthOfName(words: readonly Word[], at: number, byName: Rows): number {
  let length = Math.min(LONGEST_NAME, words.length - at);
  while (length > 0 && !byName.has(keyOf(words.slice(at, at + length)))) length--;
  return length;
}

/** Whether between two names stands nothing but what makes a list or a range of them. */
function joins(words: readonly Word[], from: number, to: number, sign: RegExp): boolean {
  const between = words.slice(from, to);
  const isJoint = ({ text }: Word) => LIST.test(text) || RANGE.test(text) || CALLS.test(text);
  return between.every(isJoint) && sign.test(words[to]!.before);
}

function isRange(words: readonly Word[], from: number, to: number): boolean {
  const between = words.slice(from, to).filter(({ text }) => !CALLS.test(text));
  if (between.length === 0) return SIGN_OF_RANGE.test(words[to]!.before);
  return between.some(({ text }) => RANGE.test(text));
}

/** Whether a number counts or measures something, or is part of 5.25, 10:20, 1/4 or 3 %; not so in a list of names. */
function isMeasured(words: readonly Word[], at: number, isInList: boolean): boolean {
  const behind = words[at + 1];
  const sign = isInList ? /^:$/ : /^[.,:/]$/;
  const isPartOf = (word: Word | undefined) => word?.isNumber && sign.test(word.before);
  if (isPartOf(words[at]) && words[at - 1]?.isNumber) return true;
  if (!behind) return false;
  return isPartOf(behind) || /^\s*%/.test(behind.before) || MEASURED.test(behind.text);
}

function blanked(text: string, from: number, to: number): string {
  return text.slice(0, from) + " ".repeat(to - from) + text.slice(to);
}

function add(rows: Map<string, number[]>, key: string, row: number): void {
  const known = rows.get(key);
  if (known) known.push(row);
  else rows.set(key, [row]);
}

function keyOf(words: readonly Word[]): string {
  return words.map(({ text }) => text).join(" ");
}

/** Runs of letters and of digits, so that "F-04" is "f4"; several are called as one is, "loads". */
function wordsOf(text: string): Word[] {
  const written = folded(text);
  let end = 0;
  return [...written.matchAll(/\p{L}+|\p{N}+/gu)].map(({ 0: found, index }) => {
    const isNumber = /^\p{N}/u.test(found);
    const own = isNumber ? found.replace(/^0+(?=.)/, "") : found.replace(/(?<=..)s$/, "");
    const before = written.slice(end, index);
    end = index + found.length;
    return { text: own, isNumber, before, from: index, to: end };
  });
}
