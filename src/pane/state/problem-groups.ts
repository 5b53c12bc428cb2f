import { WEIGHTS } from "../../fieldsheet/rule";
import type { FoundProblem } from "./problems";

/** By what problems are put together, and what comes first. */
export type ProblemGrouping = "test" | "rule";
export type ProblemOrder = "row" | "weight";

/** Problems of one test, or of one rule. */
export type ProblemGroup = readonly FoundProblem[];

/**
 * Puts problems together by test or by rule.
 *
 * @param problems In the order of the sheet.
 * @param order "row" keeps the order of the sheet, "weight" has the gravest first; of equals, the one
 *   that stands higher in the sheet.
 */
export function problemGroups(
  problems: readonly FoundProblem[],
  grouping: ProblemGrouping,
  order: ProblemOrder,
): ProblemGroup[] {
  const groups = new Map<string | number | null, FoundProblem[]>();
  for (const problem of problems) {
    const key = grouping === "test" ? problem.finding.row : problem.finding.rule;
    const group = groups.get(key);
    if (group) group.push(problem);
    else groups.set(key, [problem]);
  }
  const inSheetOrder = [...groups.values()];
  if (order === "row") return inSheetOrder;
  const gravestFirst = inSheetOrder.map((group) => byWeight(group, gravity));
  return byWeight(gravestFirst, ([first]) => gravity(first!));
}

function gravity({ finding }: FoundProblem): number {
  return WEIGHTS.indexOf(finding.weight);
}

/** Sorted by few ranks, in one pass, since there may be a hundred thousand. */
function byWeight<T>(items: readonly T[], rank: (item: T) => number): T[] {
  const ranks: T[][] = WEIGHTS.map(() => []);
  for (const item of items) ranks[rank(item)]!.push(item);
  return ranks.flat();
}
