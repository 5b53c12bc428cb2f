import { isCellError, quoted, shownValue, type CellValue } from "./cell-value";
import { folded } from "./folded";
import { issue, isIssue, type Issue } from "./issue";
import { saysNone } from "./spelled-number";
import { textFromCell } from "./words-from-cell";
import { numberFromText, type DecimalMark } from "./number-from-cell";

const words = (text: string) => new Set(text.split(", "));

const YES = words("yes, y, true, 1, si, s, oui, o, ja, j");
const NO = words("no, n, false, 0, non, nein, not");
/** A tick says yes, or that somebody looked. */
const TICK = words("x, ✓, ✔, ☑");
const IN_ORDER = words(
  "ok, okay, o.k., pass, passed, good, fine, tight, clean, sound, no leak, no leaks, bien, bueno, conforme, limpio, limpia, sin fuga, sin fugas, bon, propre, etanche, pas de fuite, gut, sauber, dicht, i. o., i.o., io, in ordnung",
);
const NOT_IN_ORDER = words(
  "fail, failed, not ok, nok, bad, leak, leaks, leaked, leaking, dirty, packed, falla, fallo, fuga, mal, mauvais, fuite, undicht, n. i. o., n.i.o., nio, nicht in ordnung",
);
/** Heads a column that may hold whether the test was made. */
const TEST_FOR_IT =
  /(?:leak(?:age)?|fuga|fuite|dicht\w*)[\s-]*(?:test|check|prufung|probe|kontrolle)|(?:test|check|essai|controle|prueba|ensayo|prufung)\s+(?:for|of|de|auf)\s+(?:leak|fug|fuit|undicht)/;

/** How a column asks whether something went wrong. */
export interface Asked {
  /** Whether it asks whether all is in order, so that a yes is good. */
  readonly opposite?: boolean;
  readonly header?: string;
}

/**
 * Whether something went wrong, such as a leak: yes and no, words of approval where they can mean one
 * thing only, in English, Spanish, French and German.
 *
 * @returns `undefined` for a blank; the issue `tick-is-unclear`, `found-or-tested`, `not-yes-or-no` or
 *   `cell-error`.
 */
export function faultFromCell(
  value: CellValue,
  { opposite = false, header = "" }: Asked = {},
): boolean | undefined | Issue {
  const text = textFromCell(value);
  if (text === undefined || isIssue(text)) return text;
  const word = folded(text).replace(/[!]+$/, "");
  if (IN_ORDER.has(word)) return false;
  if (NOT_IN_ORDER.has(word)) return true;
  if (TICK.has(word)) {
    if (opposite && word !== "x") return false;
    return issue("tick-is-unclear", { value: quoted(value) });
  }
  const yes = YES.has(word);
  if (!yes && !NO.has(word)) {
    if (saysNone(word) && !opposite) return false;
    return issue("not-yes-or-no", { value: quoted(value) });
  }
  if (!opposite && TEST_FOR_IT.test(folded(header)))
    return issue("found-or-tested", { value: quoted(value) });
  return yes !== opposite;
}

/** An amount, with or without a unit; "0?" is none. */
const AMOUNT = /^([\d\s.,/¼½¾]*[\d¼½¾])\s*(?:\p{L}[\p{L}\d³. ]*)?$/u;

/**
 * The same where an amount may be given: 8 or "8 oz" says that there was some, 0 that there was none.
 *
 * @returns Besides, one of the issues of `numberFromText`.
 */
export function anyFromCell(
  value: CellValue,
  asked: Asked = {},
  decimal: DecimalMark = ".",
): boolean | undefined | Issue {
  if (typeof value === "number" && value >= 0 && value < Infinity) return value > 0;
  const amount = isCellError(value) ? null : AMOUNT.exec(shownValue(value).trim());
  if (!amount) return faultFromCell(value, asked);
  const read = numberFromText(amount[1]!, decimal);
  return isIssue(read) ? read : read > 0;
}
