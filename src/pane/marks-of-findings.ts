import { findingSentence } from "../fieldsheet/finding-sentence";
import { WEIGHTS } from "../fieldsheet/rule";
import type { Mark } from "../hosts/sheet-host";
import { placeOf, type CheckedArea } from "./checked-area";

/**
 * The marks for all findings of a check: one a cell, with the gravest weight and every sentence.
 * What concerns a row as a whole is marked on the row's first cell, and what concerns the sheet on its
 * header.
 */
export function marksOfFindings(checked: CheckedArea): Mark[] {
  const marks = new Map<string, Mark>();
  for (const finding of checked.result.findings) {
    const place = placeOf(checked, finding);
    const key = `${place.row},${place.column}`;
    const before = marks.get(key);
    marks.set(key, {
      ...place,
      weight: before ? graver(before.weight, finding.weight) : finding.weight,
      sentences: [...(before?.sentences ?? []), findingSentence(finding, checked.result.columns)],
    });
  }
  return [...marks.values()];
}

function graver(one: Mark["weight"], other: Mark["weight"]): Mark["weight"] {
  return WEIGHTS.indexOf(one) <= WEIGHTS.indexOf(other) ? one : other;
}
