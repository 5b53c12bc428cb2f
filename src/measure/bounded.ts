import { quoted, type CellValue } from "./cell-value";
import { folded } from "./folded";
import { issue, isIssue, type Issue } from "./issue";
import { phrase } from "../messages/catalogue";
import { spelledNumber } from "./spelled-number";
import type { Value } from "../messages/sentence";

/** A number as it was measured, or written as more than it, or as no more than it. */
export interface Bounded {
  readonly value: number;
  readonly than?: "more" | "less";
}

const MORE =
  /^(?:>|more than|over|above|greater than|longer than|exceeds|mas de|mayor (?:que|de|a)|superior a|plus de|superieur a|mehr als|uber|ueber)\s*(?=[\d.,])/;
const LESS =
  /^(?:<|less than|under|below|fewer than|menos de|menor (?:que|de|a)|inferior a|moins de|inferieur a|weniger als|unter)\s*(?=[\d.,])/;
const OR_MORE =
  /^(?:≥|⩾|>\s?=|at least|al menos|por lo menos|au moins|mindestens|ab)\s*(?=[\d.,])|(?<=\d)\s*(?:\+|or more|o mas|ou plus|oder mehr)$/;
const OR_LESS = /^(?:≤|⩽|<\s?=|up to|at most|hasta|au plus|hochstens|bis)\s*(?=[\d.,])/;

/**
 * Reads a number that may be written as more or less than it: 3, ">6", "over 6 min", "menos de 1".
 *
 * @param read Reads the number without its sign or word.
 * @returns `undefined` for a blank; the issue `two-ways` for "6+" and "≥6", which can be 6 or more than 6;
 *   an issue of `read`.
 */
export function boundedFromCell(
  value: CellValue,
  read: (cell: CellValue) => number | undefined | Issue,
): Bounded | undefined | Issue {
  if (typeof value !== "string") return exactly(read(value));
  const written = inFigures(folded(value.trim()).replace(/\s+/g, " "));
  const orMore = OR_MORE.exec(written);
  if (orMore) {
    const number = read(written.replace(OR_MORE, "").trim());
    if (isIssue(number) || number === undefined) return number;
    return issue("two-ways", { value: quoted(value), one: number, other: `more than ${number}` });
  }
  const than = MORE.test(written)
    ? "more"
    : LESS.test(written) || OR_LESS.test(written)
      ? "less"
      : undefined;
  if (!than) return exactly(read(inFigures(value)));
  const number = read(written.replace(MORE, "").replace(LESS, "").replace(OR_LESS, ""));
  return number === undefined || isIssue(number) ? number : { value: number, than };
}

/** "More than two" as "more than 2"; a word for none is left to those who read it. */
function inFigures(text: string): string {
  return text.replace(/(?<![\p{L}\d])\p{L}+(?=$|[\s.])/gu, (word) =>
    String(spelledNumber(word) || word),
  );
}

function exactly(number: number | undefined | Issue): Bounded | undefined | Issue {
  return number === undefined || isIssue(number) ? number : { value: number };
}

/** Whether the number lies above a limit; `undefined` where what was written leaves it open. */
export function isOver({ value, than }: Bounded, limit: number): boolean | undefined {
  if (than === "more") return value >= limit ? true : undefined;
  if (than === "less") return value <= limit ? false : undefined;
  return value > limit;
}

/** The number as a sentence says it: 6.5, "more than 6". */
export function saidOf({ value, than }: Bounded): Value {
  return than === "more" ? phrase("more-than", { value }) : value;
}
