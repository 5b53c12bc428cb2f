import { Problem } from "../../measure/problem";

/** Whether a check came to nothing because no tests were found. */
export function isLackOfTests(problem: unknown): problem is Problem {
  return problem instanceof Problem && LACK_OF_TESTS.has(problem.id);
}

const LACK_OF_TESTS: ReadonlySet<string> = new Set([
  "selection-empty",
  "no-header-row",
  "no-readings-column",
]);
