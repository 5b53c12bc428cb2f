import { findingsList } from "../../fieldsheet/result-tables";
import type { CellValue } from "../../measure/cell-value";
import { say } from "../../messages/pane-catalogue";
import { cautionMessages } from "../../messages/english/cautions";
import { placeOf, type CheckedArea } from "./checked-area";

const ROWS_HEADER = ["row", "sample", "test", "air", "specification"];

/**
 * What the results sheet holds: the list of findings with its header in the first row, below it the
 * result of each test, and at the end the cautions. Every line has the same number of cells. Rows are
 * counted as the checked sheet counts them.
 */
export function resultsSheetTable(checked: CheckedArea): CellValue[][] {
  const { result } = checked;
  const rowOfSheet = (record: number) => placeOf(checked, { record, field: null }).row + 1;
  const [header = [], ...found] = findingsList(result);
  const findings = found.map(([row, ...cells]): CellValue[] => [
    typeof row === "number" ? rowOfSheet(row - 1) : row!,
    ...cells,
  ]);
  const tests = result.results
    .filter(({ state }) => state !== "")
    .map(({ record, sample, state, air, specification }) => [
      rowOfSheet(record),
      sample,
      state,
      air ?? "",
      specification ?? "",
    ]);
  // Under the other sentences, so that they do not make the first column wide.
  const cautions = Object.values(cautionMessages).map((sentence) => [
    ...Array<CellValue>(header.indexOf("message")).fill(""),
    sentence,
  ]);
  const lines: CellValue[][] = [
    header,
    ...findings,
    [],
    ROWS_HEADER,
    ...tests,
    [],
    [say("pane-cautions")],
    ...cautions,
  ];
  const width = lines.reduce((most, line) => Math.max(most, line.length), 0);
  return lines.map((line) => [...line, ...Array<CellValue>(width - line.length).fill("")]);
}
