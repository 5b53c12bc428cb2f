import { COMPOSED, UNITS, type Dimension } from "./unit-spellings";
import { partsOf, spelledOut, wordsOf, type Part } from "./tokens";

/** The unit of a column as its header has it. */
export interface HeaderUnit {
  /** As written, or in the spelling that the readers of cells know. */
  readonly unit: string;
  /** `undefined` for a remark in brackets that is no unit we know. */
  readonly dimension?: Dimension;
}

/** A word of a header. */
export interface Token {
  readonly text: string;
  /** Whether it stands in brackets, as remarks do. */
  readonly aside: boolean;
  /** The unit that it is where the other words speak of a time: "min" and "second" are more than that. */
  readonly timeUnit?: string;
}

/** A header as its words and its unit. */
export interface HeaderWords {
  readonly tokens: readonly Token[];
  readonly unit?: HeaderUnit;
  /** The unit of a header that is nothing else, as below the title of two header rows. */
  readonly onlyUnit?: HeaderUnit;
}

/** Units of one letter or with another meaning, which outside brackets count only as the last word. */
const TIMID = new Set("s l f c in g min second seconds once onces po cc yd t".split(" "));

/** Not the third reading of a meter, "M3". */
const CUBIC_METRES = /^\s*(?:m3|[Mm]³)\s*$/;

/** Readings are lettered: "Reading C" is the third, not in Celsius. */
const SPEAKS_OF_READINGS = /\b(?:read|rdn?g|lect|ables|28 ?d)/;

/** A letter behind cups that are counted: "Water cups (C)" is no temperature. */
const COUNTS_CUPS = /\b(?:cups?|vasos?|tazas?|gobelets?|godets?|tasses?|(?:mess)?becher)\b/i;
const LETTER_ALONE = /^[cf]$/i;

/** Splits a header into its words and its unit: in brackets, at its end, in front, or of several signs. */
export function readHeader(header: string): HeaderWords {
  if (CUBIC_METRES.test(header)) return { tokens: [], onlyUnit: { unit: "m3", dimension: "bulk" } };
  let unit: HeaderUnit | undefined;
  const tokens: Token[] = [];
  const parts = partsOf(header);
  for (const part of parts) {
    const { found, pieces } = withoutComposed(part);
    const { units, left } = part.aside
      ? unitsAmong(pieces)
      : unitsAround(pieces, parts.length > 1 || found !== undefined);
    const isLetter = LETTER_ALONE.test(part.text) && COUNTS_CUPS.test(header);
    const known = found ?? (isLetter ? undefined : units.at(-1));
    if (known && (part.aside || !unit?.dimension)) unit = known;
    else if (part.aside && !unit && !known) unit = { unit: part.text };
    for (const { text, timeUnit } of left) {
      const words = wordsOf(text).map((word) => ({ text: word, aside: part.aside }));
      tokens.push(...words.map((word) => (timeUnit ? { ...word, timeUnit } : word)));
    }
  }
  const alone = UNITS.get(header.trim().toLowerCase().replace(/\.$/, ""));
  // What is nothing but a unit may still be a word: "Second".
  if (tokens.length > 0) return { tokens, unit, onlyUnit: alone };
  return {
    tokens: parts.flatMap((part) => wordsOf(part.text)).map((text) => ({ text, aside: false })),
    onlyUnit: unit,
  };
}

const FLUID_OUNCES =
  /\b(?:fl\.? ?oz|fluid ou?nces?|onzas? (?:liquidas?|fluidas?)|onces? (?:liquides?|fluides?)|u\.?s\.? oz)\b/g;

function withoutComposed({ text, aside }: Part): { found?: HeaderUnit; pieces: string[] } {
  // In brackets it is yes or no in Spanish; elsewhere it is a serial number.
  const written = aside && /^s ?\/ ?n$/i.test(text) ? "si/no" : text;
  const counted = aside ? written.replace(SHARE_ASIDE, " ") : written.replace(SHARE_OF, " ");
  let spelled = spelledOut(counted.replace(ROUNDED_TO, " ").replace(FRACTION, " ")).replace(
    FLUID_OUNCES,
    "oz",
  );
  let found: HeaderUnit | undefined;
  for (const [dimension, pattern] of COMPOSED) {
    const match = pattern.exec(spelled);
    if (!match) continue;
    found ??= { unit: aside ? text : match[0], dimension };
    spelled = spelled.replace(pattern, " ");
  }
  const pieces = spelled.replace(/%/g, " % ").split(/[\s,;:/|–—’'-]+/);
  return {
    found,
    pieces: pieces.map((piece) => piece.replace(/^\.+|\.+$|[?!*"']/g, "")).filter(Boolean),
  };
}

/** How strong what is counted is: "70 % alcohol", "cups of 1 %". Additions of 1 % are another word. */
const SHARE_OF =
  /(?<=\s)[x×]\s?\d+(?:[.,]\d+)?\s?%|\b\d+(?:[.,]\d+)?\s?%(?=\s?(?:al[ck]|iso|ipa|cup|cop|god|bech|taz|vas|tass))|(?<=\s(?:of|de|del|d|du|à|a|at|al|zu|mit)\s)\d+(?:[.,]\d+)?\s?%/giu;
/** The same in brackets: "Alcohol (70 %)". */
const SHARE_ASIDE = /^\d+(?:[.,]\d+)?\s?%$/i;
/** Fractions of a unit, to which a result is rounded: "nearest 1/4 %". */
const FRACTION = /(?<![\d/.])\d\s?\/\s?\d{1,2}(?=\s?(?:%|"|″|in\b|div|pt|oz))/giu;
/** To what a result is rounded, whatever its unit: "to 0.25", "nearest 1/4". */
const ROUNDED_TO =
  /(?<!\d )\b(?:to )?(?:the )?(?:nearest|rounded(?: to)?|to) (?:\d\s?\/\s?\d{1,2}|\d?[.,]\d+)/giu;

/** "Cups put back in", "cups in": no inches. */
const PUT_IN = /\b(?:back|put|poured|added|filled|cups?|alcohol|ipa|water) in$/;

/** A piece of a header that may be a word. */
type Piece = Pick<Token, "text" | "timeUnit">;

function unitsAmong(pieces: readonly string[]): { units: HeaderUnit[]; left: Piece[] } {
  const units = pieces.flatMap((piece) => UNITS.get(piece) ?? []);
  const left = pieces.filter((piece) => !UNITS.has(piece) || isTime(piece));
  return { units, left: left.map(pieceOf) };
}

/** Units behind the last word, nearest first, and before the first one: "% air", "pints of alcohol". */
function unitsAround(
  pieces: readonly string[],
  isPart: boolean,
): { units: HeaderUnit[]; left: Piece[] } {
  const left = [...pieces];
  const units: HeaderUnit[] = [];
  const times: Piece[] = [];
  const front: Piece[] = [];
  const lettered = SPEAKS_OF_READINGS.test(pieces.join(" "));
  while (left.length > (isPart ? 0 : 1) && UNITS.has(left.at(-1)!)) {
    if (lettered && left.at(-1) === "c") break;
    if (PUT_IN.test(left.join(" "))) break;
    const last = left.pop()!;
    units.unshift(UNITS.get(last)!);
    if (isTime(last)) times.unshift(pieceOf(last));
  }
  while (left.length > 1 && isUnitInFront(left[0]!)) {
    units.unshift(UNITS.get(left.shift()!)!);
  }
  // "Min. to settle", where it may as well be the least.
  if (left.length > 1 && left[0] === "min") {
    units.unshift(UNITS.get("min")!);
    left.shift();
    front.push(pieceOf("min"));
  }
  return { units, left: [...front, ...left.map((text) => ({ text })), ...times] };
}

const DURATION_IN_FRONT =
  /^(?:seconds|secs|minutes|mins|minutos|minuten|segundos|sekunden|secondes)$/;

/** As in "% air", "oz of alcohol" and "seconds inverted". */
function isUnitInFront(piece: string): boolean {
  const dimension = TIMID.has(piece) ? undefined : UNITS.get(piece)?.dimension;
  if (DURATION_IN_FRONT.test(piece)) return true;
  return dimension === "percent" || dimension === "liquid";
}

function pieceOf(text: string): Piece {
  return isTime(text) ? { text, timeUnit: text } : { text };
}

/** "min" is also the least, and "second" the second of several, in French and Spanish too. */
function isTime(piece: string): boolean {
  return /^(?:min|seconde?|segundo)$/.test(piece);
}
