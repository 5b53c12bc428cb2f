import type { Weight } from "../fieldsheet/rule";
import { WEIGHTS } from "../fieldsheet/rule";

/*
 * How our marks are told from everything else in a workbook. A copied sheet carries its marks along,
 * and they are still recognised there.
 */

/** Formula of the conditional format of a weight: always true, and it names its owner. */
export function markFormula(weight: Weight): string {
  return `=LEN("fresh-mark-${weight}")>0`;
}

/** The weight that a conditional format of ours stands for; `undefined` for anybody else's. */
export function weightOfFormula(formula: string): Weight | undefined {
  return WEIGHTS.find((weight) => formula.includes(`"fresh-mark-${weight}"`));
}

/** First line of every note of ours, with the number of characters below that are ours too. */
const FIRST_LINE = /^Checked with FRESH \((\d+)\)$/;

/** The text of a note of ours. */
export function noteText(sentences: readonly string[]): string {
  const below = withPlainLineEnds(sentences.join("\n"));
  return `Checked with FRESH (${below.length})\n${below}`;
}

/** Whether a note is ours. */
export function isOurNote(text: string): boolean {
  return FIRST_LINE.test(partsOf(text).first);
}

/** What somebody has written behind our sentences in a note of ours; "" where nobody has. */
export function addedToOurNote(text: string): string {
  const { first, below } = partsOf(text);
  const ours = Number(FIRST_LINE.exec(first)?.[1] ?? 0);
  return below.slice(ours).trim();
}

function partsOf(text: string): { readonly first: string; readonly below: string } {
  const [first = "", ...others] = withPlainLineEnds(text).split("\n");
  return { first: first.trim(), below: others.join("\n") };
}

function withPlainLineEnds(text: string): string {
  return text.replace(/\r\n?/g, "\n");
}
