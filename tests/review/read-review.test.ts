import type { CellValue } from "../../src/measure/cell-value";
import { Problem } from "../../src/measure/problem";
import { linesToAdd, notYetWritten, type NewEntry } from "../../src/review/lines-to-add";
import { readReview } from "../../src/review/read-review";
import { HEADING_IDS, HEADINGS, type ReviewEntry } from "../../src/review/review-entry";
import { timeOf, timeText } from "../../src/review/time-of-entry";

/* What is expected here is the table as it was described to its readers: docs/review.md. */

const HEADER: CellValue[] = HEADING_IDS.map((id) => HEADINGS[id]);

const ENTRY: NewEntry = {
  time: "2026-05-31 14:05:09",
  sheet: "Loads",
  sample: "S-09",
  place: "N11",
  rule: "near-limit",
  column: "Reported air (%)",
  value: "7.5",
  figures: "air 7.5; margin 0",
  finding: "Within, on the limit.",
  decision: "accepted",
  reason: "Seen on site",
  oldValue: "",
  newValue: "",
  initials: "KR",
};

const lineOf = (change: Partial<Record<keyof NewEntry, CellValue>> = {}): CellValue[] =>
  HEADING_IDS.map((id) => ({ ...ENTRY, ...change })[id] || null);

function review(...lines: CellValue[][]) {
  const read = readReview([HEADER, ...lines]);
  if (read instanceof Problem) throw read;
  return read;
}

test("what is written is read back as it was", () => {
  const cells = linesToAdd([ENTRY, { ...ENTRY, decision: "open", reason: "" }]);
  expect(readReview(cells)).toEqual({
    entries: [
      { ...ENTRY, line: 2 },
      { ...ENTRY, decision: "open", reason: "", line: 3 },
    ],
    notTaken: [],
  });
});

test("a blank sheet is a review of nothing", () => {
  expect(readReview([])).toEqual({ entries: [], notTaken: [] });
  expect(readReview([[null, " "]])).toEqual({ entries: [], notTaken: [] });
});

test("columns may stand in any order, with titles, lines and columns of the user's own between them", () => {
  const own = (row: CellValue[], more: CellValue): CellValue[] => [more, ...[...row].reverse()];
  const { entries, notTaken } = readReview(
    [
      ["Review of May", ...HEADER.map(() => null)],
      own(HEADER, "Asked"),
      own(lineOf(), "lab"),
      own(
        HEADER.map(() => null),
        "Week 22",
      ),
      own(lineOf({ sample: "S-10" }), null),
    ],
    5,
  ) as Exclude<ReturnType<typeof readReview>, Problem>;
  expect(entries.map(({ sample, line }) => [sample, line])).toEqual([
    ["S-09", 7],
    ["S-10", 9],
  ]);
  expect(notTaken).toEqual([]);
});

test("a second row of headings, from two panes that began at once, is no decision", () => {
  expect(review(lineOf(), HEADER, lineOf({ sample: "S-10" })).entries).toHaveLength(2);
});

test("a sheet of that name that holds something else is not read, and what is missing is said", () => {
  expect(readReview([["My own notes"], ["time", "sheet"]])).toMatchObject({
    id: "review-sheet-not-ours",
    values: { missing: expect.stringMatching(/^sample, place, rule, .*, initials$/) },
  });
  const renamed = HEADER.map((heading) => (heading === "rule" ? "check" : heading));
  expect(readReview([renamed, lineOf()])).toMatchObject({ values: { missing: "rule" } });
  expect(() => linesToAdd([ENTRY], [["My own notes"]])).toThrow(Problem);
});

test.each<[string, Partial<Record<keyof NewEntry, CellValue>>, string]>([
  ["an unknown decision", { decision: "aproved" as never }, "review-decision-unknown"],
  ["no decision", { decision: null }, "review-decision-unknown"],
  ["a time that is none", { time: "yesterday" }, "review-time-unreadable"],
  ["an acceptance without a reason", { reason: null }, "review-line-incomplete"],
  ["a decision of nobody", { initials: " " }, "review-line-incomplete"],
  ["a decision about no rule", { rule: null }, "review-line-incomplete"],
])("a line edited by hand with %s is not taken, and said with its line", (_, change, id) => {
  const { entries, notTaken } = review(lineOf(), lineOf(change));
  expect(entries).toHaveLength(1);
  expect(notTaken).toMatchObject([{ id, values: { line: 3 } }]);
});

test.each([
  ["aceptado", "accepted"],
  ["Corregido", "corrected"],
  ["abierto", "open"],
])("“%s”, typed by hand, is %s", (written, decision) => {
  const { entries } = review(lineOf({ decision: written as never }));
  expect(entries).toMatchObject([{ decision }]);
});

test("decisions are read in capitals too, and times as a spreadsheet keeps them", () => {
  // 46173.5 is noon of 31 May 2026: 46173 days after 30 December 1899, counted with a calendar.
  const { entries } = review(lineOf({ decision: "Accepted " as never, time: 46173.5 }));
  expect(entries).toMatchObject([{ decision: "accepted", time: "2026-05-31 12:00:00" }]);
});

test("a time is written by the clock of the place and sorts as a text", () => {
  expect(timeText(new Date(2026, 4, 3, 9, 7, 5))).toBe("2026-05-03 09:07:05");
  expect(timeOf("2026-05-03 09:07")).toBe("2026-05-03 09:07");
  for (const none of ["3 May", "", true, null, 0, -1, 1e9]) expect(timeOf(none)).toBeUndefined();
});

test("new lines go below the columns of a table that was moved about", () => {
  const there = [
    ["Asked", ...[...HEADER].reverse()],
    ["lab", ...lineOf().reverse()],
  ];
  const [line] = linesToAdd([{ ...ENTRY, sample: "S-10" }], there);
  expect(line![0]).toBeNull();
  expect(line!.slice(1).reverse()).toEqual(lineOf({ sample: "S-10" }));
});

test("what is the last word already is not written twice", () => {
  const written: ReviewEntry[] = [{ ...ENTRY, line: 2 }];
  const later = { ...ENTRY, time: "2026-06-01 08:00:00" };
  expect(notYetWritten([later], written)).toEqual([]);
  const open: NewEntry = { ...later, decision: "open", reason: "" };
  expect(notYetWritten([open], written)).toEqual([open]);
  expect(notYetWritten([later], [...written, { ...open, line: 3 }])).toEqual([later]);
});
