import type { Weight } from "../fieldsheet/rule";
import { WEIGHTS } from "../fieldsheet/rule";

/*
 * How our marks are told from everything else in a workbook. A copied sheet carries its marks along,
 * and they are still recognised there.
 */

/** First line of every note of ours. */
export const NOTE_FIRST_LINE = "Checked with FRESH";

/** Formula of the conditional format of a weight: always true, and it names its owner. */
export function markFormula(weight: Weight): string {
  return `=LEN("fresh-mark-${weight}")>0`;
}

/** The weight that a conditional format of ours stands for; `undefined` for anybody else's. */
export function weightOfFormula(formula: string): Weight | undefined {
  return WEIGHTS.find((weight) => formula.includes(`"fresh-mark-${weight}"`));
}

/** Whether a note is ours. */
export function isOurNote(text: string): boolean {
  return text.split(/\r?\n/, 1)[0]?.trim() === NOTE_FIRST_LINE;
}

/** The text of a note of ours. */
export function noteText(sentences: readonly string[]): string {
  return [NOTE_FIRST_LINE, ...sentences].join("\n");
}
