import type { Finding } from "../../fieldsheet/rule";
import { RULES } from "../../fieldsheet/rules";

/** One thing that is wrong, with what may be behind it. */
export interface FoundProblem {
  readonly finding: Finding;
  /** Slips that lead to exactly this, the likelier first. */
  readonly explanations: readonly Finding[];
}

/** Ids of findings that a rule makes itself; all others explain the one before them. */
const RULE_IDS: ReadonlySet<string> = new Set(RULES.map(({ id }) => id));

const KNOWN = new WeakMap<readonly Finding[], readonly FoundProblem[]>();

/** Findings as problems: what only explains another finding is kept with it, and not counted. */
export function problemsOf(findings: readonly Finding[]): readonly FoundProblem[] {
  const known = KNOWN.get(findings) ?? puttingTogether(findings);
  KNOWN.set(findings, known);
  return known;
}

function puttingTogether(findings: readonly Finding[]): readonly FoundProblem[] {
  const problems: { finding: Finding; explanations: Finding[] }[] = [];
  for (const finding of findings) {
    const last = problems.at(-1);
    const explains = !RULE_IDS.has(finding.rule) && last?.finding.row === finding.row;
    if (explains) last!.explanations.push(finding);
    else problems.push({ finding, explanations: [] });
  }
  return problems;
}
