import { checkTestsInSteps } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";
import { findTestsIn } from "../../src/reading/read-sheet";
import { median } from "./in-turn";
import { HEADERS, rowsOf } from "./sheet";

/** The check as the pane makes it, at so many rows: its longest step in milliseconds, the median of some rounds. */
export function longestStep(count: number, rounds = 5): number {
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
  return median(longest);
}
