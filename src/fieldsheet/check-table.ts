import { compareWithLimits } from "../acceptance/limits";
import { isBlank } from "../measure/cell-value";
import { Problem } from "../measure/problem";
import type { Columns } from "../reading/column-place";
import { recogniseColumns } from "../reading/columns";
import type { FieldId } from "../reading/fields";
import type { SheetTable } from "../reading/sheet-table";
import type { CheckOptions } from "./check-options";
import type { CheckResult, RowResult } from "./check-result";
import { DECIDING_FIELDS, judgeRow } from "./judge-row";
import type { JudgedRow, TestState } from "./judged-row";
import { readRecord } from "./read-record";
import { rowLimits } from "./row-limits";
import type { Finding, Remark, Rule } from "./rule";
import { RULES } from "./rules";
import type { SheetContext } from "./sheet-context";

/** Few enough to take some hundredths of a second. */
const ROWS_IN_A_STEP = 500;

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
  const steps = checkInSteps(table, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/**
 * The same check in steps of some hundred rows, so that a long one can show how far it is, let the
 * page breathe and be stopped between steps. Each step yields the share that is done, 0 to 1.
 */
export function* checkInSteps(
  table: SheetTable,
  options: CheckOptions = {},
): Generator<number, CheckResult> {
  const columns = recogniseColumns(table.headers);
  const sheet: SheetContext = { columns, has: (field) => columns[field] !== undefined };
  checkForm(table, sheet);
  const records = yield* mapInSteps(table.rows, [0, 0.3], (row, i) =>
    readRecord(row, i, columns, options.decimal),
  );
  const limited = rowLimits(records, options);

  const speaking = RULES.filter((rule) => canSpeak(rule, sheet));
  const voiding = speaking.filter(({ weight }) => weight === "void");
  const others = speaking.filter(({ weight }) => weight !== "void");
  const looked = yield* mapInSteps(limited, [0.3, 0.6], ({ record, limits }) => {
    const judged = judgeRow(record, sheet, limits);
    const found = lookAt(judged, voiding, sheet);
    return { row: { ...judged, state: stateOf(judged, found) }, found };
  });
  const decided = looked.map(({ row }) => row);
  const found = yield* mapInSteps(looked, [0.6, 1], ({ row, found }) => [
    ...found,
    ...lookAt(row, others, sheet),
  ]);

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

function* mapInSteps<A, B>(
  items: readonly A[],
  [from, to]: readonly [from: number, to: number],
  work: (item: A, i: number) => B,
): Generator<number, B[]> {
  const made: B[] = [];
  for (const [i, item] of items.entries()) {
    if (i > 0 && i % ROWS_IN_A_STEP === 0) yield from + ((to - from) * i) / items.length;
    made.push(work(item, i));
  }
  return made;
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

/** Whether the sheet has the columns that a rule needs. */
function canSpeak({ needs, needsOneOf }: Rule, sheet: SheetContext): boolean {
  return needs.every(sheet.has) && (needsOneOf?.some(sheet.has) ?? true);
}

function lookAt(row: JudgedRow, rules: readonly Rule[], sheet: SheetContext): Finding[] {
  if (row.blank) return [];
  const called = row.otherMethod ? rules.filter(({ anyMethod }) => anyMethod) : rules;
  return called.flatMap((rule) => {
    const said = rule.look?.(row, sheet);
    if (!said) return [];
    return [said].flat().map((remark) => findingOf(rule, row.row, remark, sheet.columns));
  });
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
