import { inWords } from "../../src/messages/pane-catalogue";
import type { CellValue } from "../../src/measure/cell-value";
import { faultFromCell } from "../../src/measure/fault-from-cell";
import { isIssue, type Issue } from "../../src/measure/issue";
import { readTable } from "../../src/reading/read-table";
import type { FieldRecord } from "../../src/reading/record";
import { recogniseColumns } from "../../src/reading/columns";
import { dateFromCell } from "../../src/measure/date";
import type { FieldId } from "../../src/reading/fields";
import { VALUES, type Reads, type ValueCase } from "./corpus/values";
import { checkedTable } from "../fieldsheet/checked";

/*
 * The cells of the corpus as people type them, each read with the column that it stands in. What is right
 * was written down from the trade's ways of writing, before the readers of cells.
 */

/** Headers that say a field in plain words, where the corpus names only what the column is for. */
const PLAIN: Readonly<Partial<Record<ValueCase["kind"], string>>> = {
  date: "Date",
  time: "Time",
  cups: "Cups",
  alcohol: "Alcohol",
  settle: "Time to settle (min)",
  foam: "Foam",
  specification: "Specified air",
  air: "Reported air",
  mix: "Mix",
  leak: "Leak",
  packed: "Packed concrete",
};

/** The same for a header whose own words decide how a cell is read. */
const TELLING: Readonly<Record<string, string>> = { "Dicht?": "Meter tight?" };

/** A header of which a sheet asks whether it is a leak at all; whoever says so keeps it for its column. */
const KEPT = "Leak test";

/** The header of a case where it is recognised by itself, else plain words for the same. */
function headerOf({ kind, header }: ValueCase): string {
  const field = fieldOf(kind);
  if (header === undefined || field === undefined) return header ?? PLAIN[kind]!;
  if (recogniseColumns([header])[field]) return header;
  return TELLING[header] ?? PLAIN[kind]!;
}

function fieldOf(kind: ValueCase["kind"]): FieldId | undefined {
  if (kind === "remark") return undefined;
  return kind === "specification" ? "target" : kind;
}

/** The column of a case with its own cell last, beside a reading, so that every row holds a test. */
function tableOf(one: ValueCase) {
  const header = headerOf(one);
  const cells: readonly CellValue[] = [...(one.column ?? []), one.written];
  return { headers: [header, "Final reading"], rows: cells.map((cell) => [cell, 6]) };
}

/** The record of a case and the value of its field, or why there is none. */
function readingOf(one: ValueCase): { record: FieldRecord; value: unknown; issue?: Issue } {
  const { records } = readTable(tableOf(one));
  const record = records.at(-1)!;
  const field = fieldOf(one.kind);
  if (one.header === KEPT) {
    const read = faultFromCell(one.written, { header: KEPT });
    return isIssue(read) ? { record, value: undefined, issue: read } : { record, value: read };
  }
  if (field === undefined) return { record, value: undefined };
  return { record, value: record.values[field], issue: record.unreadable[field] };
}

type Outcome = "right" | "missed" | "wrong";

const TWO_WAYS = [
  "two-ways",
  "date-is-unclear",
  "comma-is-unclear",
  "point-is-unclear",
  "bound-leaves-open",
  "tick-is-unclear",
  "found-or-tested",
];

/** How a cell was read; "missed" where it was not read, and said so, and could have been. */
function outcomeOf(one: ValueCase): Outcome {
  const { reads } = one;
  const { record, value, issue } = readingOf(one);
  const word = record.testersWord?.says;
  if ("void" in reads) {
    if (word === undefined) return reads.void ? "wrong" : "right";
    return (word === "void") === reads.void ? "right" : word === "void" ? "wrong" : "missed";
  }
  if ("notRead" in reads) {
    if (fieldOf(one.kind) === undefined || word) return word === "may be void" ? "right" : "wrong";
    if (value !== undefined || !issue) return "wrong";
    // The ways that are values have to be those of the corpus; those in words say the same otherwise.
    const ways = [issue.values.one, issue.values.other].filter((way) => way !== undefined);
    const named = ways.map(inWords);
    const values = reads.notRead.every((way) => /^(?:more than )?\d/.test(way));
    if (reads.notRead.length === 0) return TWO_WAYS.includes(issue.id) ? "missed" : "right";
    if (values) return sorted(named) === sorted(reads.notRead) ? "right" : "missed";
    return TWO_WAYS.includes(issue.id) ? "right" : "missed";
  }
  if (issue) return "missed";
  return isAsRead(one, reads, value) ? "right" : "wrong";
}

const sorted = (ways: readonly string[]) => [...ways].sort().join("; ");

function isAsRead(one: ValueCase, reads: Exclude<Reads, { void: boolean }>, value: unknown) {
  if ("date" in reads) return value === dateFromCell(reads.date);
  if ("time" in reads) {
    const [hour, minute] = reads.time.split(":").map(Number);
    return value === hour! * 60 + minute!;
  }
  if ("yes" in reads) return value === reads.yes;
  if ("sameAsAbove" in reads) {
    const { records } = readTable(tableOf(one));
    return same(value, records.at(-2)!.values[fieldOf(one.kind)!]);
  }
  if ("amount" in reads) return same(value, amountIn(reads));
  if ("moreThan" in reads) return same(value, { value: reads.moreThan, than: "more" });
  if ("lessThan" in reads) return same(value, { value: reads.lessThan, than: "less" });
  if ("number" in reads) return same(value, reads.number) || same(value, { value: reads.number });
  const { low, high } = value as { low?: number; high?: number };
  return "low" in reads || "high" in reads
    ? same({ low, high }, { ...NO_LIMITS, ...reads })
    : false;
}

const NO_LIMITS = { low: undefined, high: undefined };

/** An amount in the units of the correction table; none has no unit. */
function amountIn({ amount, unit }: { readonly amount: number; readonly unit: string }) {
  if (unit === "mL") return { amount: amount / 1000, unit: "L" };
  return { amount, unit: unit === "fl oz" ? "oz" : unit || "pt" };
}

function same(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

const outcomes = VALUES.map((one) => [one, outcomeOf(one)] as const);
const those = (outcome: Outcome) =>
  outcomes
    .filter(([, its]) => its === outcome)
    .map(([{ kind, header, written, column }]) =>
      [kind, header, JSON.stringify(written), ...(column ? [JSON.stringify(column)] : [])].join(
        " | ",
      ),
    );

test("no cell is read as something else than it says", () => {
  expect(those("wrong")).toEqual([]);
});

test("no cell is left unread that a careful reader would read", () => {
  expect(those("missed")).toEqual([]);
});

test("a test that the tester calls void gives no air, and nothing is asked for in its place", () => {
  const called = VALUES.filter(({ reads }) => "void" in reads && reads.void);
  expect(called.length).toBeGreaterThan(20);
  for (const one of called) {
    const { results } = checkedTable(tableOf(one));
    const { state: state, air, findings } = results.at(-1)!;
    expect([one.written, state, air]).toEqual([one.written, "void", undefined]);
    expect(findings.filter(({ weight }) => weight === "error")).toEqual([]);
  }
});
