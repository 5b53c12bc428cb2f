import type { CheckResult } from "../fieldsheet/check-result";
import type { TestResult } from "../fieldsheet/test-result";
import { findingSentence } from "../fieldsheet/finding-sentence";
import type { Finding } from "../fieldsheet/finding";
import { blockReference, cellReference } from "../files/workbook/cell-reference";
import { isCellError, type CellValue } from "../measure/cell-value";
import type { BlockPlace } from "../reading/block-place";
import type { FieldId } from "../reading/fields";
import type { SaidFinding, SaidSheet, SaidTest } from "./said";

/** How what is checked is spoken of. */
export interface CheckedPlace {
  readonly file: string;
  readonly sheet?: string;
  /** Where a test or its field stands, its row as people count it. */
  at(row: number, field: FieldId | null): { readonly row: number; readonly cell?: string };
  /** Where something else of what was checked stands. */
  of(place: BlockPlace): { readonly row: number; readonly cell?: string };
}

/** The place of a check whose table has its header in a row of a sheet, from 0. */
export function placeInSheet(
  file: string,
  sheet: string | undefined,
  headerRow: number,
  { reading }: CheckResult,
): CheckedPlace {
  const of = ({ row, column }: BlockPlace) => {
    const top = headerRow + row;
    return { row: top + 1, cell: cellReference(top, column) };
  };
  return { file, sheet, of, at: (row, field) => of(reading.placeOf(row, field)) };
}

/**
 * The findings of a check, and on request its tests, row by row.
 *
 * @param inside Which rows are meant; all of them unless it says otherwise.
 */
export function* saidOfRows(
  result: CheckResult,
  place: CheckedPlace,
  withTests: boolean,
  inside: (row: number) => boolean = () => true,
): Generator<SaidFinding | SaidTest> {
  const byRow = new Map<number, Finding[]>();
  for (const finding of result.findings) {
    const { record } = finding;
    if (record === null) yield saidOfFinding(finding, result, place);
    else if (inside(record)) byRow.set(record, [...(byRow.get(record) ?? []), finding]);
  }
  for (const row of result.results) {
    if (!inside(row.record)) continue;
    for (const finding of byRow.get(row.record) ?? []) yield saidOfFinding(finding, result, place);
    if (withTests && row.state !== "") yield saidOfTest(row, place);
  }
}

/** What was done with a sheet. @param headerRow Row of its header, from 0; @param bottom its last row. */
export function saidOfSheet(
  { results, findings, notLookedAt }: CheckResult,
  { file, sheet }: CheckedPlace,
  headerRow: number,
  columns: number,
  bottom = headerRow + results.length,
): SaidSheet {
  const count = (which: string) => results.filter(({ state }) => state === which).length;
  const block = { top: headerRow, left: 0, bottom, right: columns - 1 };
  return {
    kind: "sheet",
    ...{ file, sheet },
    area: blockReference(block),
    tests: results.length - count(""),
    valid: count("valid"),
    void: count("void"),
    incomplete: count("incomplete"),
    findings: findings.length,
    notLookedAt,
  };
}

function saidOfFinding(
  finding: Finding,
  { results, columns, reading }: CheckResult,
  place: CheckedPlace,
): SaidFinding {
  const { record, field, rule, weight } = finding;
  const { file, sheet } = place;
  const value = record === null || field === null ? null : reading.cell(record, field);
  return {
    kind: "finding",
    ...{ file, sheet },
    ...(record !== null ? place.at(record, field) : finding.place && place.of(finding.place)),
    sample: record === null ? "" : (results[record]?.sample ?? ""),
    ...{ rule, weight },
    column: (field !== null && columns[field]?.header) || "",
    value: plain(value),
    message: findingSentence(inRowsOfSheet(finding, place), columns),
  };
}

function saidOfTest(row: TestResult, place: CheckedPlace): SaidTest {
  const { file, sheet } = place;
  const { sample, state, air, specification } = row;
  const at = place.at(row.record, null).row;
  return {
    kind: "test",
    ...{ file, sheet },
    row: at,
    ...{ sample, test: state, air, specification },
  };
}

/** A finding that names an earlier row counts rows of the table; here they are those of the sheet. */
function inRowsOfSheet(finding: Finding, place: CheckedPlace): Finding {
  const { before } = finding.values;
  if (finding.say !== "duplicate-test" || typeof before !== "number") return finding;
  return { ...finding, values: { ...finding.values, before: place.at(before - 1, null).row } };
}

function plain(value: CellValue): string | number | boolean {
  return isCellError(value) ? value.error : (value ?? "");
}
