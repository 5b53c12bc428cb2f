import { checkTestsInSteps } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";
import { findTestsIn } from "../../src/reading/read-sheet";
import { HEADERS, rowsOf } from "./sheet";

/**
 * The check as the pane makes it, at so many rows: its longest step in milliseconds. The best of some
 * rounds counts, since whatever else the machine does falls into some step of most of them.
 */
export function longestStep(count: number, rounds = 9): number {
  const block = [HEADERS, ...rowsOf(count, true)];
  const longest = Array.from({ length: rounds }, () => {
    const found = findTestsIn(block);
    if (isIssue(found)) throw new Error(found.id);
    const steps = checkTestsInSteps(found);
    for (let most = 0; ;) {
      const start = performance.now();
      const { done } = steps.next();
      most = Math.max(most, performance.now() - start);
      if (done) return most;
    }
  });
  return Math.min(...longest);
}
