import { sentenceOfFinding } from "./sentence-of-finding";
import type { Weight } from "../../fieldsheet/finding";
import { badgeWord } from "../kit/badge";
import type { CheckedArea } from "./checked-area";
import { whereOf } from "./where-of";

/**
 * Findings as lines that can be pasted into a sheet or a letter: cell, sample, weight and sentence,
 * what explains it behind, set off by tabs.
 *
 * @param shown The weights that are wanted.
 */
export function findingLines(checked: CheckedArea, shown: ReadonlySet<Weight>): string[] {
  const { findings, results } = checked.result;
  return findings
    .filter(({ weight }) => shown.has(weight))
    .map((finding) => {
      const sample = finding.record === null ? "" : results[finding.record]!.sample;
      const cells = [whereOf(finding, checked), sample, badgeWord(finding.weight)];
      // A header may hold line breaks or tabs of its own.
      return [...cells, sentenceOfFinding(finding, checked)]
        .map((cell) => cell.replace(/\s+/g, " "))
        .join("\t");
    });
}
