import { readFileSync } from "node:fs";
import { answersNow } from "./answers";
import { INTENDED_CHANGES, isAbout } from "./intended-changes";
import { CHANGED, firstDigests, isIntended, writtenChanges } from "./kept";

/*
 * The answers to random sheets and calls are those of the first version, but for the changes that are
 * listed with a reason. After such a change `npm run digests` writes down what has become another.
 */
const answers = answersNow();
const first = firstDigests();
const changed = answers.filter((answer) => answer.digest !== first(answer));

test("an answer that differs from the first version's is one of the changes that are listed", () => {
  const unlisted = changed.filter((answer) => !isIntended(answer));
  expect(
    unlisted.map(({ of, number, tags }) => `${of} ${number}: ${[...tags].join(", ")}`),
  ).toEqual([]);
});

test("the answers that have changed are those written down", () => {
  expect(writtenChanges(answers)).toBe(readFileSync(CHANGED, "utf8"));
});

test("each listed change has a reason, and an answer that it is about", () => {
  for (const change of INTENDED_CHANGES) {
    expect(change.reason).toMatch(/^[A-Z].{20,}\.$/);
    const about = changed.filter((answer) => isAbout(change, answer));
    expect([change.tag, about.length > 0]).toEqual([change.tag, true]);
  }
});

test("most of the sheets and calls get as far as a result", () => {
  // Otherwise the digests would hold little: all errors of one kind have one digest.
  const kinds = new Map<string, Set<string>>();
  for (const { of, digest } of answers) kinds.set(of, (kinds.get(of) ?? new Set()).add(digest));
  const few = [...kinds].filter(([, digests]) => digests.size < 8).map(([of]) => of);
  expect(few).toEqual([]);
  expect(kinds.get("check")!.size).toBeGreaterThan(2000);
  expect(kinds.get("findings")!.size).toBeGreaterThan(3000);
});
