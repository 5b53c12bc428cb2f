import { WEIGHTS, type Weight } from "../fieldsheet/finding";

/*
 * How our highlights are told from every other conditional format. A copied sheet carries them along, and
 * they are still recognised there.
 */

/** The formula, whole, as files and Excels hand it over: without "=", with spaces, with LEN in another language. */
const OURS = /^=?\s*[\p{L}\p{N}._]+\s*\(\s*"fresh-mark-([a-z]+)"\s*\)\s*>\s*0\s*$/u;

/** Formula of the conditional format of a weight: always true, and it names its owner. */
export function markFormula(weight: Weight): string {
  return `=LEN("fresh-mark-${weight}")>0`;
}

/** The weight that a conditional format of ours stands for; `undefined` for anybody else's. */
export function weightOfFormula(formula: string): Weight | undefined {
  const named = OURS.exec(formula)?.[1];
  return WEIGHTS.find((weight) => weight === named);
}
