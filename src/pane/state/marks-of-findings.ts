import { findingSentence } from "../../fieldsheet/finding-sentence";
import type { Mark } from "../../hosts/sheet-host";
import { placeOf, type CheckedArea } from "./checked-area";

/**
 * One mark for each finding. What concerns a row as a whole is marked on the row's first cell, and what
 * concerns the sheet on its header.
 */
export function marksOfFindings(checked: CheckedArea): Mark[] {
  const { findings, columns } = checked.result;
  return findings.map((finding) => ({
    ...placeOf(checked, finding),
    weight: finding.weight,
    sentences: [findingSentence(finding, columns)],
  }));
}
