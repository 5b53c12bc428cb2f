import { checkBlock } from "../../src/fieldsheet/check-table";
import { findingSentence } from "../../src/fieldsheet/finding-sentence";
import { shownValue, type CellValue } from "../../src/measure/cell-value";
import { Problem } from "../../src/measure/problem";
import { readSetup } from "../../src/reading/setup/setup";
import { figuresOf } from "../../src/review/figures";
import { linesToAdd, type NewEntry } from "../../src/review/lines-to-add";
import { addressOf } from "./sheet";
import { WEEK_HEADERS, WEEK_SETUP } from "./week-of-mixes";

type Rows = readonly (readonly CellValue[])[];
/** What the invented reviewer of the week decided, and of which finding. */
type Word = Pick<NewEntry, "sample" | "rule" | "decision" | "reason" | "time"> &
  Partial<Pick<NewEntry, "oldValue" | "newValue">>;

const REVIEWER = "IK";

/** Found on the first evening, and put right since: a reading typed without its point. */
const MISTYPED: Word & { readonly column: string; readonly typed: number } = {
  ...{ sample: "W-02", rule: "beyond-scale", column: "Pointer B", typed: 50 },
  ...{ decision: "corrected", oldValue: "50", newValue: "5", reason: "the book says 5.0" },
  time: "2026-06-15 16:30:00",
};

const OF_WHAT_IS_THERE: readonly Word[] = [
  {
    ...{ sample: "W-03", rule: "outside-specification", decision: "accepted" },
    reason: "load sent back before any of it was placed; ticket kept",
    time: "2026-06-16 16:40:12",
  },
  {
    ...{ sample: "W-07", rule: "density-outside-specification", decision: "accepted" },
    reason: "weighed again, 119; the engineer was told and takes it",
    time: "2026-06-17 17:05:30",
  },
  {
    ...{ sample: "W-11", rule: "third-reading-missing", decision: "open" },
    reason: "north crew looks for the third reading in its book",
    time: "2026-06-18 16:51:47",
  },
];

/** The cells of the sheet of the review: the decisions of a week about its findings, one corrected since. */
export function weekReview(rows: Rows): CellValue[][] {
  const { sample, column, typed, ...word } = MISTYPED;
  const at = WEEK_HEADERS.findIndex((header) => header === column);
  const before = rows.map((row) =>
    row[0] === sample ? row.map((cell, i) => (i === at ? typed : cell)) : row,
  );
  return linesToAdd([
    ...entriesOf(before, [{ ...word, sample }]),
    ...entriesOf(rows, OF_WHAT_IS_THERE),
  ]);
}

function entriesOf(rows: Rows, words: readonly Word[]): NewEntry[] {
  const setup = readSetup(WEEK_SETUP);
  const { findings, results, reading, columns } = Problem.unless(
    checkBlock([WEEK_HEADERS, ...rows], { setup }),
  );
  return words.map((word) => {
    const record = results.find(({ sample }) => sample === word.sample)!.record;
    const finding = findings.find((each) => each.rule === word.rule && each.record === record)!;
    const { field, header, values } = finding;
    const { row, column } = reading.placeOf(record, field);
    return {
      ...{ oldValue: "", newValue: "", ...word, sheet: "Tests", initials: REVIEWER },
      place: addressOf(row, column),
      column: (field === null ? header : columns[field]?.header) ?? "",
      value: field === null ? "" : shownValue(reading.cell(record, field)).trim(),
      figures: figuresOf(values),
      finding: findingSentence(finding, columns),
    };
  });
}
