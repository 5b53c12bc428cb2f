import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Answer } from "./answers";
import { INTENDED_CHANGES, isAbout } from "./intended-changes";

/** The digests of the first version's answers; they are never renewed. */
export const FIRST = join(__dirname, "first-version.txt");

/** The digests that have become others since, one a line: of, number, digest. */
export const CHANGED = join(__dirname, "changed.txt");

const FIRST_LINES = new Map(
  readFileSync(FIRST, "utf8")
    .split("\n")
    .map((line) => line.split(" ") as [of: string, digests: string]),
);

/** How long one digest is. */
const LENGTH = 4;

/** Digests as they are kept: one line for each kind of answer, its digests in order. */
export function written(answers: readonly Answer[]): string {
  const lines = new Map<string, string[]>();
  for (const { of, digest } of answers) lines.set(of, [...(lines.get(of) ?? []), digest]);
  return [...lines].map(([of, digests]) => `${of} ${digests.join("")}\n`).join("");
}

/** The first version's digest of an answer. */
export function firstDigests(): (answer: Answer) => string {
  return ({ of, number }) =>
    (FIRST_LINES.get(of) ?? "").slice(number * LENGTH, (number + 1) * LENGTH);
}

/** Whether the first version had a worksheet function; later ones have no digests to be held to. */
export function isOfTheFirstVersion(id: string): boolean {
  return FIRST_LINES.has(id);
}

/** The digests that have changed, as they are kept. */
export function writtenChanges(answers: readonly Answer[]): string {
  const first = firstDigests();
  return answers
    .filter((answer) => answer.digest !== first(answer))
    .map(({ of, number, digest }) => `${of} ${number} ${digest}\n`)
    .join("");
}

/** Whether a change of an answer is one that is listed with its reason. */
export function isIntended(answer: Answer): boolean {
  return INTENDED_CHANGES.some((change) => isAbout(change, answer));
}
