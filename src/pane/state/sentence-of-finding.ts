import { findingSentence } from "../../fieldsheet/finding-sentence";
import type { Finding } from "../../fieldsheet/finding";
import { columnLetters } from "../../hosts/cell-address";
import type { CheckedArea } from "./checked-area";

/** What a finding says, with the columns called by their letters in the sheet. */
export function sentenceOfFinding(finding: Finding, { read, result }: CheckedArea): string {
  return findingSentence(finding, result.columns, (index) =>
    columnLetters(read.area.column + index),
  );
}
