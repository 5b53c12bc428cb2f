import type { CheckResult } from "../fieldsheet/check-result";
import { findingsList } from "../fieldsheet/result-tables";
import type { CellValue } from "../measure/cell-value";
import { say } from "../messages/catalogue";
import { cautionMessages } from "../messages/cautions";

const ROWS_HEADER = ["row", "sample", "test", "air", "specification"];

/**
 * What the results sheet holds: the list of findings with its header in the first row, below it the
 * result of each test, and at the end the cautions. Every line has the same number of cells.
 */
export function resultsSheetTable(result: CheckResult): CellValue[][] {
  const tests = result.rows
    .filter(({ test }) => test !== "")
    .map(({ row, sample, test, air, specification }) => [
      row + 1,
      sample,
      test,
      air ?? "",
      specification ?? "",
    ]);
  const cautions = Object.values(cautionMessages).map((sentence) => [sentence]);
  const lines: CellValue[][] = [
    ...findingsList(result),
    [],
    ROWS_HEADER,
    ...tests,
    [],
    [say("pane-cautions")],
    ...cautions,
  ];
  const width = Math.max(...lines.map((line) => line.length));
  return lines.map((line) => [...line, ...Array<CellValue>(width - line.length).fill("")]);
}
