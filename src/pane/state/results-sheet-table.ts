import { FINDINGS_HEADER, findingLine, linesBelowFindings } from "../../fieldsheet/result-tables";
import { atOnce, each, type Steps } from "../../hosts/in-slices";
import type { CellValue } from "../../measure/cell-value";
import { say } from "../../messages/pane-catalogue";
import { cautionSentences } from "../kit/caution-sentences";
import { placeOf, type CheckedArea } from "./checked-area";

const ROWS_HEADER = ["row", "sample", "test", "air", "specification"];
/** More findings than these make a sheet that nobody can use any more. */
const MOST_FINDINGS = 50_000;
const MESSAGE = FINDINGS_HEADER.indexOf("message");

/** The lines of a results sheet, and what there is to say where findings were left out. */
export interface Results {
  readonly lines: CellValue[][];
  readonly cut: readonly string[];
}

/** The lines of a results sheet; see `resultsInSteps`. */
export function resultsSheetTable(checked: CheckedArea, most = MOST_FINDINGS): CellValue[][] {
  return atOnce(resultsInSteps(checked, most)).lines;
}

/**
 * What the results sheet holds, made in steps: the list of findings with its header in the first row, below
 * it the result of each test, and at the end the cautions. Every line has the same number of cells. Rows are
 * counted as the checked sheet counts them.
 *
 * @param most Findings that are listed; where there are more, a line below them says where all of them are.
 */
export function* resultsInSteps(checked: CheckedArea, most = MOST_FINDINGS): Steps<Results> {
  const { result } = checked;
  const rowOfSheet = (record: number) => placeOf(checked, { record, field: null }).row + 1;
  const width = Math.max(FINDINGS_HEADER.length, ROWS_HEADER.length);
  const filled = (line: readonly CellValue[]): CellValue[] => [
    ...line,
    ...Array<CellValue>(width - line.length).fill(""),
  ];
  // Under the other sentences, so that they do not make the first column wide.
  const sentence = (text: string) => filled([...Array<CellValue>(MESSAGE).fill(""), text]);
  const all = result.findings.length;
  const cut = all > most ? [say("results-only-first", { shown: most, findings: all })] : [];
  const findings = yield* each(result.findings.slice(0, most), (finding) => {
    const [row, ...cells] = findingLine(finding, result);
    return filled([finding.record === null ? row! : rowOfSheet(finding.record), ...cells]);
  });
  const tests = yield* each(
    result.results.filter(({ state }) => state !== ""),
    ({ record, sample, state, air, specification }) =>
      filled([rowOfSheet(record), sample, state, air ?? "", specification ?? ""]),
  );
  const lines = [
    filled(FINDINGS_HEADER),
    ...findings,
    ...cut.map(sentence),
    ...linesBelowFindings(result).map(filled),
    filled([]),
    filled(ROWS_HEADER),
    ...tests,
    filled([]),
    filled([say("pane-cautions")]),
    ...cautionSentences().map(sentence),
  ];
  return { lines, cut };
}
