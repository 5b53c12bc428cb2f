import { atOnce, each, type Steps } from "../../hosts/in-slices";
import { sentenceOfFinding } from "./sentence-of-finding";
import type { Mark } from "../../hosts/sheet-host";
import { placeOf, type CheckedArea } from "./checked-area";

/**
 * One mark for each finding. What concerns a row as a whole is marked on the row's first cell, what
 * concerns a column on its header, and what concerns the sheet on the first header and on the cell of each
 * row that it rests on.
 */
export function marksOfFindings(checked: CheckedArea): Mark[] {
  return atOnce(marksInSteps(checked));
}

/** The same in steps. */
export function* marksInSteps(checked: CheckedArea): Steps<Mark[]> {
  const marks = yield* each(checked.result.findings, (finding) => {
    const { weight, record, field, column, place, behind = [] } = finding;
    const sentences = [sentenceOfFinding(finding, checked)];
    return [record, ...behind].map((record) => ({
      ...placeOf(checked, record === null ? { record, field, column, place } : { record, field }),
      weight,
      sentences,
    }));
  });
  return marks.flat();
}
