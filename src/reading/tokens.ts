import { folded } from "../measure/folded";

/** A cell may hold 32,767 characters; no header needs more than these to say what it heads. */
const LONGEST_HEADER = 200;

/** Marks that stand for the word "number". A number sign is never the word "no". */
const NUMBER_SIGNS = /#|№|(?<!\p{L})n\.?\s?[°º]|\b(?:no|nos|nr|num|nbr|nro)\.(?!\p{L})/giu;
const ORDINALS =
  /(?<![\p{L}\d])(\d)\s?(?:st|nd|rd|th|ers?|[eè]res?|re|[eè]me|i[eè]me|e|nde?|do|da|ro|ra|[º°ª])(?![\p{L}\d])/giu;

/** A sign at the end of a header says which limit stands below it, "Air ≥"; a level that settles has none. */
const LEAST_OR_MOST =
  /^(?!.*(?:settl|time|tiempo|temps|zeit|foam|espuma|mousse|schaum))([^\d≥≤]*\p{L}[^\d≥≤]*)([≥≤])\s*$/iu;

/** "Slump, 1-3 in": what is allowed says nothing of what the column holds. */
const ALLOWED =
  /(?<=\p{L}.*[\s,(])\d+(?:[.,]\d+)?\s*(?:-|–|to|a|à|bis|hasta)\s*\d+(?:[.,]\d+)?(?=\s*(?:%|in\b|cm\b|mm\b|°|º|[FC]\b|pcf\b))/giu;

/** "Reading 1-2 %" is numbered, of the first roll. */
const ROLLS = /read|rdn?g|lect|ables|roll/i;

/** The two parties to a contract in German, in capitals behind what was measured: "Luft AN". */
const PARTY = /(?<=\p{Ll}.*\s)(?<!(?:lesung|beton|bau|werke?)\s)A(N|G)\s*$/u;

/** Markup that came along with a header from a page, such as "<b>"; no word of it is one. */
const MARKUP = /<\/?[a-z][a-z0-9]*(?:\s[^<>]{0,80})?\/?>/gi;
/** "Air = last reading + 7": how it is found says nothing of what it is. */
const FORMULA = /^([^=]*\p{L}{2}[^=]*)=.*$/su;

/** "Pint(s) of alcohol": not the seconds, which stand at the end of a header. */
const PLURAL_IN_BRACKETS = /(\p{L}{2}e?)\((?:e?s|e?n)\)(?:\s+(?=\p{L}))/gu;

/** A piece of a header in or outside brackets. */
export interface Part {
  readonly text: string;
  /** Whether it stands in brackets, as remarks do. */
  readonly aside: boolean;
}

/** A header in the order of its parts. A bracket that is never closed goes to the end. */
export function partsOf(header: string): readonly Part[] {
  return cut(header)
    .split(/([([{][^)\]}]*[)\]}]?)/)
    .map((text) => ({ text: text.replace(/[()[\]{}]/g, " ").trim(), aside: /^[([{]/.test(text) }))
    .filter(({ text }) => text !== "");
}

/**
 * A part of a header with its words set apart, still with its signs: camelCase and snake_case are
 * split, "1st" is "1", "#" is "number", accents and letter case are folded away.
 */
export function spelledOut(text: string): string {
  return folded(
    splitCamelCase(text.replace(PARTY, (_, of) => (of === "N" ? "Auftragnehmer" : "Auftraggeber")))
      .replace(/['’]d(?!\p{L})/giu, "d")
      .replace(/(?<!\p{L})un-(?=\p{L}{3})/giu, "un")
      .replace(/-t-(?=il|elle|on\b)/giu, " ")
      .replace(/(?<!\p{L})f\s?['’´`]\s?c(?=k?(?!\p{L}))/giu, "fc")
      .replace(/(?<!\p{L})c\/\s?(?=\p{L}{3})/giu, " ")
      .replace(/(?<!\p{L})([CF])\s?[°º](?!\p{L})/gu, "°$1")
      .replace(/º(?=\s?[CF](?!\p{L}))/giu, "°")
      .replace(/\b(T)\s?[º°ª](?!\s?[CF]\b)/gi, "$1 ")
      .replace(/(?<![\p{L}\d])([123])A(?!\p{L})/gu, " $1 ")
      .replace(NUMBER_SIGNS, " number ")
      .replace(/\+\s?\/\s?[-−–]|±/g, " plusminus ")
      .replace(ORDINALS, " $1 ")
      .replace(
        /(?<![\p{L}\d])(?:w\s?\/\s?(?:cm|c|b|z)|[ae]\s?\/\s?(?:mc|[cl]))(?![\p{L}\d])/giu,
        " wcratio ",
      )
      .replace(LEAST_OR_MOST, (_, of, sign) => `${of} ${sign === "≥" ? "minimum" : "maximum"} `)
      .replace(/[<≤]/g, " lessthan ")
      .replace(/[>≥]/g, " morethan ")
      .replace(/@/g, " at "),
  );
}

/** The words of a text, folded; figures and letters apart. */
export function wordsOf(text: string): readonly string[] {
  return spelledOut(text)
    .replace(/%/g, " percent ")
    .replace(/(\p{L})(?=\d)|(\d)(?=\p{L})/gu, "$1$2 ")
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
}

/** As far as it is looked at, with words that were broken at a line's end made whole. */
function cut(header: string): string {
  return header
    .slice(0, LONGEST_HEADER)
    .replace(PLURAL_IN_BRACKETS, "$1 ")
    .replace(ALLOWED, (range, _, all: string) => (ROLLS.test(all) ? range : " "))
    .replace(FORMULA, "$1")
    .replace(MARKUP, " ")
    .replace(/\u00AD/g, "")
    .replace(/(\p{Ll})-\s?\n\s?(\p{Ll})/gu, "$1$2")
    .replace(/\s+/g, " ");
}

function splitCamelCase(text: string): string {
  return text
    .replace(/_/g, " ")
    .replace(/(\p{Ll}{2})(\p{Lu})/gu, "$1 $2")
    .replace(/(\p{L}\p{Ll})(\p{Lu}\p{Ll})/gu, "$1 $2")
    .replace(/(\p{Lu})(\p{Lu}\p{Ll}{2})/gu, "$1 $2");
}
