/*
 * Writes down which answers to the random sheets and calls of tests/digests have become others than
 * the first version's. A change has to be listed with its reason before it is written down.
 */
import { writeFileSync } from "node:fs";
import { answersNow } from "../tests/digests/answers";
import { CHANGED, firstDigests, isIntended, writtenChanges } from "../tests/digests/kept";

const answers = answersNow();
const first = firstDigests();
const unlisted = answers.filter((answer) => answer.digest !== first(answer) && !isIntended(answer));
if (unlisted.length > 0) {
  for (const { of, number, tags } of unlisted.slice(0, 40))
    console.log(`${of} ${number}: ${[...tags].join(", ")}`);
  throw new Error(
    `${unlisted.length} answers have changed that no entry of tests/digests/intended-changes.ts speaks of.`,
  );
}
writeFileSync(CHANGED, writtenChanges(answers));
