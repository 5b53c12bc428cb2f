import { WEIGHTS, type Finding } from "../../fieldsheet/finding";

/** By what findings are put together, and what comes first. */
export type FindingGrouping = "test" | "rule";
export type FindingOrder = "row" | "weight";

/** Findings of one test, or of one rule. */
export type FindingGroup = readonly Finding[];

/**
 * Puts findings together by test or by rule.
 *
 * @param findings In the order of the sheet.
 * @param order "row" keeps the order of the sheet, "weight" has the gravest first; of equals, the one
 *   that stands higher in the sheet.
 */
export function findingGroups(
  findings: readonly Finding[],
  grouping: FindingGrouping,
  order: FindingOrder,
): FindingGroup[] {
  const groups = new Map<string | number | null, Finding[]>();
  for (const finding of findings) {
    const key = grouping === "test" ? finding.record : finding.rule;
    const group = groups.get(key);
    if (group) group.push(finding);
    else groups.set(key, [finding]);
  }
  const inSheetOrder = [...groups.values()];
  if (order === "row") return inSheetOrder;
  const gravestFirst = inSheetOrder.map((group) => byWeight(group, gravity));
  return byWeight(gravestFirst, ([first]) => gravity(first!));
}

function gravity({ weight }: Finding): number {
  return WEIGHTS.indexOf(weight);
}

/** Sorted by few ranks, in one pass, since there may be a hundred thousand. */
function byWeight<T>(items: readonly T[], rank: (item: T) => number): T[] {
  const ranks: T[][] = WEIGHTS.map(() => []);
  for (const item of items) ranks[rank(item)]!.push(item);
  return ranks.flat();
}
