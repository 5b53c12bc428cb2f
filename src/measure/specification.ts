import { isBlank, quoted, writtenIn, type CellValue } from "./cell-value";
import { folded } from "./folded";
import { phrase } from "../messages/catalogue";
import type { Value } from "../messages/sentence";
import { issue, isIssue, type Issue } from "./issue";
import { numberFromCell, type DecimalMark } from "./number-from-cell";
import { exact } from "./rounding";

/** What a cell says of a value: one number, or the limits between which it has to lie. */
export interface Specification {
  /** The only number of the cell, or the one in the middle. */
  readonly aim?: number;
  readonly low?: number;
  readonly high?: number;
}

/** How far a value may lie below and above the one aimed at. */
export interface Tolerance {
  readonly below: number;
  readonly above: number;
}

/** From here on a number is a day of the calendar, which spreadsheets make out of 5-8. */
const FIRST_DAY_NUMBER = 10_000;

const N = String.raw`(\d*[.,]?\d+(?: \d+/\d+)?)`;
const PLUS_MINUS = String.raw`(?:±|\+\s*/\s*-|\+-)`;
const AROUND = new RegExp(`^${N} ?${PLUS_MINUS} ?${N}$`);
const UNEVEN = String.raw`\(?\+ ?${N}[ ,;/]*- ?${N}\)?`;
const AROUND_UNEVENLY = new RegExp(`^${N} ?${UNEVEN}$`);
const UNEVEN_ALONE = new RegExp(`^${UNEVEN}$`);
const BETWEEN = new RegExp(
  `^(?:between |from |entre |de |du |zwischen |von )?${N} ?(?:-|\\.\\.+|(?<= )(?:to|and|a|y|et|bis|und)(?= )) ?${N}$`,
);
const LEAST = String.raw`(?:≥|>=|(?:min(?:imum|imo)?|mind(?:estens)?)\b\.?:?|at least|not (?:less than|under|below)|al menos|au moins)`;
const MOST = String.raw`(?:≤|<=|max(?:imum|imo)?\b\.?:?|hochstens|at most|not (?:more than|over|above)|up to|hasta|como maximo|au plus)`;
const FROM = new RegExp(`^${LEAST} ?${N}$|^${N} ?${LEAST}$`);
const UP_TO = new RegExp(`^${MOST} ?${N}$|^${N} ?${MOST}$`);
const TWO_NUMBERS = new RegExp(`^${N}( |, |; ?)${N}$`);

/**
 * Reads what is specified in one cell: 6, "6 ± 1.5", "6.0 +2/-1", "4.5-7.5", "4.5 to 7.5", "min 4",
 * "max 7.5", "min 4.5, max 7.5", with words in English, Spanish, French and German.
 *
 * @returns `undefined` for a blank; the issue `specification-looks-like-date`, `two-ways` for two numbers
 *   of which it is not said how they belong together, or one of `numberFromCell`.
 */
export function specificationFromCell(
  value: CellValue,
  decimal: DecimalMark = ".",
): Specification | undefined | Issue {
  if (isBlank(value)) return undefined;
  const alone = numberFromCell(value, decimal);
  if (typeof alone === "number") {
    return alone >= FIRST_DAY_NUMBER
      ? issue("specification-looks-like-date", { value: alone })
      : { aim: alone };
  }
  if (typeof value !== "string" || alone === undefined) return alone;
  return specificationIn(plain(writtenIn(value)), value) ?? notASpecification(alone, value);
}

function specificationIn(text: string, value: string): Specification | Issue | undefined {
  const [, middle, about] = AROUND.exec(text) ?? [];
  if (middle) return around(number(middle), { below: number(about!), above: number(about!) });
  const [, aim, above, below] = AROUND_UNEVENLY.exec(text) ?? [];
  if (aim) return around(number(aim), { below: number(below!), above: number(above!) });
  const [, low, high] = BETWEEN.exec(text) ?? [];
  if (low) return between(number(low), number(high!), value);
  const from = FROM.exec(text);
  if (from) return { low: number(from[1] ?? from[2]!) };
  const upTo = UP_TO.exec(text);
  if (upTo) return { high: number(upTo[1] ?? upTo[2]!) };
  const [, one, mark, other] = TWO_NUMBERS.exec(text) ?? [];
  if (one) return twoNumbers(one, other!, mark === " ", value);
  const parts = text.split(/[,;] |[;/]| and | y | et | und /).map((part) => part.trim());
  const limits = parts.length === 2 ? parts.map((part) => specificationIn(part, value)) : [];
  const [first, second] = limits;
  if (!first || !second || isIssue(first) || isIssue(second)) return undefined;
  const both = { ...first, ...second };
  return both.aim === undefined && both.low !== undefined && both.high !== undefined
    ? both
    : undefined;
}

function around(aim: number, { below, above }: Tolerance): Specification {
  return { aim, low: exact(aim - below), high: exact(aim + above) };
}

function between(low: number, high: number, value: string): Specification | Issue {
  if (low <= high) return { low, high };
  return issue("two-ways", {
    value: quoted(value),
    one: `${low} ± ${high}`,
    other: fromTo(high, low),
  });
}

function twoNumbers(one: string, other: string, apart: boolean, value: string): Issue {
  const [least, most] = [one, other].sort((a, b) => number(a) - number(b));
  return issue("two-ways", {
    value: quoted(value),
    one: apart ? `${one} ± ${other}` : fromTo(least!, most!),
    other: apart ? fromTo(least!, most!) : { either: [one, other] },
  });
}

function fromTo(from: Value, to: Value): Value {
  return phrase("from-to", { from, to });
}

function notASpecification(alone: Issue, value: string): Issue {
  return alone.id === "not-a-number" || alone.id === "two-ways"
    ? issue("not-a-specification", { value: quoted(value) })
    : alone;
}

/** Reads a tolerance: 1.5, "±1.5", "+/- 1.5 %", "+2/-1". Issues as for `numberFromCell`. */
export function toleranceFromCell(
  value: CellValue,
  decimal: DecimalMark = ".",
): Tolerance | undefined | Issue {
  const text = typeof value === "string" ? plain(writtenIn(value)) : "";
  const [, above, below] = UNEVEN_ALONE.exec(text) ?? [];
  if (above) return { below: number(below!), above: number(above) };
  const sign = new RegExp(`^\\s*(?:±|\\+\\s*/\\s*[-−])\\s*`);
  const size = numberFromCell(typeof value === "string" ? value.replace(sign, "") : value, decimal);
  return typeof size === "number" ? { below: size, above: size } : size;
}

const VULGAR: Readonly<Record<string, string>> = { "¼": "1/4", "½": "1/2", "¾": "3/4" };

/** Folded, with plain fractions and dashes, and without percent signs. */
function plain(written: string): string {
  return folded(written.replace(/[¼½¾]/g, (sign) => ` ${VULGAR[sign]}`))
    .replace(/[−–—]/g, "-")
    .replace(/%|\bpercent\b|\bpct\b/g, " ")
    .replace(/\s+/g, " ")
    .replace(/ (?=[)])/g, "")
    .trim()
    .replace(/^[([]([^()[\]]*)[)\]]$/, "$1");
}

/** A comma between figures of a specification is a decimal comma: no limit of air has thousands. */
function number(written: string): number {
  const [whole, fraction] = written.replace(",", ".").split(" ");
  const [part, parts] = (fraction ?? "0/1").split("/").map(Number);
  return exact(Number(whole) + part! / parts!);
}
