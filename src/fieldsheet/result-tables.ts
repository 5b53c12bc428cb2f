import { isBlank, isCellError, type CellValue } from "../measure/cell-value";
import { say } from "../messages/catalogue";
import type { FieldId } from "../reading/fields";
import type { CheckResult } from "./check-result";
import type { TestResult } from "./test-result";
import { findingSentence } from "./finding-sentence";
import { notLookedAtSentence } from "./not-looked-at";
import type { Finding } from "./finding";

type Cell = string | number | boolean;

export const FINDINGS_HEADER = [
  "row",
  "sample",
  "rule",
  "weight",
  "column",
  "value",
  "message",
  "cause",
];

/** Four cells for each row: test, air, specification, findings. A blank row gives blanks. */
export function checkedRows(result: CheckResult): Cell[][] {
  const ofTheSheet = result.findings.filter(({ record }) => record === null);
  const firstTested = result.results.find(({ state }) => state !== "")?.record;
  const notRead = result.findings.find(({ rule }) => rule === "rows-not-read");
  const below = notRead && findingSentence(notRead, result.columns);
  return result.results.map(({ record, state, air, specification, findings }) => {
    if (below !== undefined && isBelowAnotherHeader(record, result)) return ["", "", "", below];
    // What concerns the whole sheet is said once, with its first test, unless it changes every test.
    const more = record === firstTested ? ofTheSheet.filter((one) => !findings.includes(one)) : [];
    const said = more.length > 0 ? [...more, ...findings] : findings;
    const sentences = said.map((finding) => findingSentence(finding, result.columns));
    return [state, air ?? "", specification ?? "", listed(sentences)];
  });
}

/** Whether a row holds something and stands below a header of another table. */
function isBelowAnotherHeader(
  record: number,
  { reading: { headedAgain, cell }, columns }: CheckResult,
): boolean {
  const fields = Object.keys(columns) as FieldId[];
  return (
    headedAgain !== undefined &&
    record >= headedAgain.record &&
    fields.some((field) => !isBlank(cell(record, field)))
  );
}

/**
 * A header row and one line for each finding, or one line that says that nothing was found; and at the
 * end what was not looked at.
 */
export function findingsList(result: CheckResult): Cell[][] {
  const lines = result.findings.map((finding) => findingLine(finding, result));
  return [FINDINGS_HEADER, ...lines, ...linesBelowFindings(result)];
}

/** What stands below the findings: that nothing was found, and what was not looked at. */
export function linesBelowFindings({ findings, results, notLookedAt }: CheckResult): Cell[][] {
  const tested = results.filter(({ state }) => state !== "").length;
  const nothing = ["", "", "", "", "", "", say("nothing-found", { rows: tested }), ""];
  const unseen = notLookedAtSentence(notLookedAt);
  const unseenLine = ["", "", "not-looked-at", "note", "", "", unseen ?? "", ""];
  return [...(findings.length > 0 ? [] : [nothing]), ...(unseen === undefined ? [] : [unseenLine])];
}

/** The line of one finding, as many cells as the header has. */
export function findingLine(finding: Finding, { results, columns, reading }: CheckResult): Cell[] {
  const { record, field, rule, causes = [], weight } = finding;
  const result: TestResult | undefined = record === null ? undefined : results[record];
  const cell = field === null || record === null ? null : reading.cell(record, field);
  return [
    record === null ? "sheet" : record + 1,
    result?.sample ?? "",
    rule,
    weight,
    (field !== null && columns[field]?.header) || finding.header || "",
    plain(cell),
    findingSentence(finding, columns),
    causes.map(({ id }) => id).join(", "),
  ];
}

function plain(cell: CellValue): Cell {
  return isCellError(cell) ? cell.error : (cell ?? "");
}

/** Sentences in one cell: the semicolon takes the place of the full stop. */
function listed(sentences: readonly string[]): string {
  return sentences.map((sentence) => sentence.replace(/\.$/, "")).join("; ");
}
