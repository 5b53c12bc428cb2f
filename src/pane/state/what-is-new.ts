import type { CheckResult } from "../../fieldsheet/check-result";
import { findingSentence } from "../../fieldsheet/finding-sentence";
import type { Finding } from "../../fieldsheet/finding";

/** What a second check of a table found that the first did not, and how many findings are gone. */
export interface WhatIsNew {
  readonly fresh: ReadonlySet<Finding>;
  readonly gone: number;
}

/** Of more findings than these nobody looks for the new ones, and comparing them takes its time. */
const MOST_FINDINGS = 5000;

/**
 * Compares two checks of one table. A finding is the same where sample, rule and sentence are: rows may
 * have moved between the two.
 */
export function whatIsNew(before: CheckResult, now: CheckResult): WhatIsNew {
  if (Math.max(before.findings.length, now.findings.length) > MOST_FINDINGS)
    return { fresh: new Set(), gone: 0 };
  const left = new Map<string, number>();
  for (const finding of before.findings) {
    const key = keyOf(finding, before);
    left.set(key, (left.get(key) ?? 0) + 1);
  }
  const fresh = new Set<Finding>();
  for (const finding of now.findings) {
    const key = keyOf(finding, now);
    const known = left.get(key) ?? 0;
    if (known === 0) fresh.add(finding);
    else left.set(key, known - 1);
  }
  return { fresh, gone: [...left.values()].reduce((sum, count) => sum + count, 0) };
}

function keyOf(finding: Finding, { results, columns }: CheckResult): string {
  const sample = finding.record === null ? "" : results[finding.record]!.sample;
  return [sample, finding.rule, findingSentence(finding, columns)].join("\n");
}
