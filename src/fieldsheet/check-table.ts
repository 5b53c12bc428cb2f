import { compareWithLimits } from "../acceptance/limits";
import { isBlank } from "../measure/cell-value";
import { Problem } from "../measure/problem";
import type { CheckResult, RowResult } from "./check-result";
import { recogniseColumns } from "./columns";
import type { FieldId } from "./fields";
import { DECIDING_FIELDS, judgeRow } from "./judge-row";
import type { JudgedRow, TestState } from "./judged-row";
import { readRecord } from "./read-record";
import type { Finding, Remark, Rule } from "./rule";
import { RULES } from "./rules";
import { rowLimits } from "./row-limits";
import type { Columns, SheetContext } from "./sheet-context";
import type { CheckOptions, SheetTable } from "./sheet-table";

/**
 * Checks a table of field tests: every rule on every row, and every finding kept.
 *
 * @param table Headers and rows as they stand in the sheet.
 * @param options Specification limits, if they do not stand in the sheet, and the decimal mark.
 * @returns For each row the state of its test, its air content, how that stands to the
 *   specification, and the findings; and the findings of the sheet as a whole.
 * @throws Problem `headers-and-rows-differ`, `no-readings-column`, `limits-do-not-fit`.
 */
export function checkTable(table: SheetTable, options: CheckOptions = {}): CheckResult {
  const columns = recogniseColumns(table.headers);
  const sheet: SheetContext = { columns, has: (field) => columns[field] !== undefined };
  checkForm(table, sheet);
  const records = table.rows.map((row, i) => readRecord(row, i, columns, options.decimal));
  const limits = rowLimits(records, options);
  const judged = records.map((record, i) => judgeRow(record, sheet, limits[i]!));

  const speaking = RULES.filter((rule) => rule.needs.every((field) => sheet.has(field)));
  const voiding = speaking.filter(({ weight }) => weight === "void");
  const others = speaking.filter(({ weight }) => weight !== "void");
  const found = judged.map((row) => lookAt(row, voiding, sheet));
  const decided = judged.map((row, i) => ({ ...row, state: stateOf(row, found[i]!) }));
  decided.forEach((row, i) => found[i]!.push(...lookAt(row, others, sheet)));

  const across = speaking.flatMap((rule) =>
    (rule.lookAcross?.(decided, sheet) ?? []).map((remark) =>
      findingOf(rule, remark.row, remark, columns),
    ),
  );
  for (const finding of across) if (finding.row !== null) found[finding.row]!.push(finding);
  const ofTheSheet = across.filter(({ row }) => row === null);
  const rows = decided.map((row, i) => rowResult(row, found[i]!));
  return { columns, rows, findings: [...ofTheSheet, ...rows.flatMap(({ findings }) => findings)] };
}

function checkForm({ headers, rows }: SheetTable, sheet: SheetContext): void {
  const odd = rows.find((row) => row.length !== headers.length);
  if (odd) {
    throw new Problem("headers-and-rows-differ", { headers: headers.length, columns: odd.length });
  }
  const READINGS: readonly FieldId[] = ["first", "second", "final"];
  if (headers.every(isBlank)) throw new Problem("no-header-row");
  if (!READINGS.some((field) => sheet.has(field))) throw new Problem("no-readings-column");
}

function lookAt(row: JudgedRow, rules: readonly Rule[], sheet: SheetContext): Finding[] {
  if (row.blank) return [];
  return rules.flatMap((rule) =>
    [rule.look?.(row, sheet) ?? []]
      .flat()
      .map((remark) => findingOf(rule, row.row, remark, sheet.columns)),
  );
}

function findingOf(rule: Rule, row: number | null, remark: Remark, columns: Columns): Finding {
  return {
    row,
    column: (remark.field && columns[remark.field]?.index) ?? null,
    field: remark.field,
    rule: remark.as ?? rule.id,
    weight: rule.weight,
    say: remark.say ?? rule.id,
    values: remark.values ?? {},
  };
}

/** A void finding decides; else a test without a result, or with a deciding cell that cannot be read, is incomplete. */
function stateOf(row: JudgedRow, findings: readonly Finding[]): TestState {
  if (row.blank) return "";
  if (findings.some(({ weight }) => weight === "void")) return "void";
  const unread = DECIDING_FIELDS.some((field) => row.unreadable[field]);
  return row.result === undefined || unread ? "incomplete" : "valid";
}

function rowResult(judged: JudgedRow, findings: readonly Finding[]): RowResult {
  const { low, high } = judged.limits;
  const air = judged.state === "valid" ? judged.result?.air : undefined;
  const limited = air !== undefined && (low !== undefined || high !== undefined);
  return {
    row: judged.row,
    sample: judged.values.sample ?? judged.values.load ?? "",
    test: judged.state,
    air,
    specification: limited ? compareWithLimits(air, low, high) : undefined,
    findings,
    judged,
  };
}
