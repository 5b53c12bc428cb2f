import { cautionMessages } from "../../../src/messages/english/cautions";
import { say } from "../../../src/messages/pane-catalogue";
import { reportContent, type ReportGiven } from "../../../src/pane/report/report-content";
import { reportSheetInSteps, type ReportSheet } from "../../../src/pane/report/report-sheet";
import type { ShownTrends } from "../../../src/pane/report/report-trend";
import { subjectOf } from "../../../src/pane/state/review/finding-on-sheet";
import { NO_REVIEW } from "../../../src/pane/state/review/review-on-sheet";
import type { ReviewEntry } from "../../../src/review/review-entry";
import { checkedSheet } from "./checked-sheet";

const checked = checkedSheet([
  ["Sample", "Date", "First reading", "Second reading", "Alcohol (oz)", "Foam", "Density (lb/ft3)"],
  ["L-1", "2026-06-10", 6, 6, 16, 1, 117],
  ["=1+1", "2026-06-10", 6.25, 6, 16, 3, 116.5],
  ["L-3", "2026-06-11", 6, 6, 16, 1, null],
]);
const GIVEN: ReportGiven = {
  scope: { kind: "all" },
  typed: { project: "Kestrel viaduct", date: "never" },
  above: [],
  file: "loads.xlsx",
  version: "1.0.0",
  review: NO_REVIEW,
};

const TREND = { group: "All tests", title: "Air", words: "Mean 6.00 %.", drawing: undefined };

function sheetOf(
  given: Partial<ReportGiven> = {},
  broken = false,
  trends: ShownTrends = { trends: [TREND], left: [] },
): ReportSheet {
  const content = reportContent(checked, { ...GIVEN, ...given });
  const steps = reportSheetInSteps(content, trends, broken);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
const lineWith = ({ rows }: ReportSheet, first: unknown) => rows.find(([cell]) => cell === first);

test("the head takes what the sheet says, then what was typed, and leaves room for the rest", () => {
  const sheet = sheetOf();
  expect(lineWith(sheet, say("report-head-project"))).toEqual(["Project", null, "Kestrel viaduct"]);
  expect(lineWith(sheet, say("report-head-date"))).toEqual([
    "Date of the tests",
    null,
    "2026-06-10, 2026-06-11",
  ]);
  expect(lineWith(sheet, say("report-head-testers"))).toEqual(["Tested by", null, ""]);
});

test("every test has a line with what any of them records, as it stands in the sheet", () => {
  const { rows, look } = sheetOf();
  const at = rows.findIndex(([first]) => first === "Row");
  expect(rows.slice(at, at + 4)).toEqual([
    [
      "Row",
      "Sample",
      "Date",
      "1st, %",
      "2nd, %",
      "Final, %",
      "Alcohol",
      "Air, %",
      "Result",
      "Density, lb/ft3",
    ],
    [2, "L-1", "2026-06-10", 6, 6, 6, "16 oz", 6, "Valid", 117],
    // More than two divisions of foam void a test (C173, from memory), so it has no air.
    [3, "=1+1", "2026-06-10", 6.25, 6, 6, "16 oz", "", "Void", 116.5],
    [4, "L-3", "2026-06-11", 6, 6, 6, "16 oz", 6, "Valid", ""],
  ]);
  expect(look.bold).toContain(at);
  expect(look.widths).toHaveLength(10);
});

test("what is the same for all tests of a report needs no column", () => {
  const { rows } = sheetOf({ scope: { kind: "test", record: 1 } });
  expect(rows.find(([first]) => first === "Row")).toContain("Date");
  const day = sheetOf({
    scope: { kind: "day", day: checked.result.results[0]!.values.date! },
  });
  expect(lineWith(day, "Row")).not.toContain("Date");
});

test("it says of what it is, by what and when it was checked", () => {
  const [, ...said] = sheetOf().rows.slice(0, 4).flat();
  expect(said.join(" ")).toContain("File: loads.xlsx. Sheet: Loads. Cells: A1:R4.");
  expect(said.join(" ")).toMatch(
    /Checked 2026-06-10 14:05 \(UTC[+−]\d\d:\d\d\) by .* 1\.0\.0, with \d+ rules/,
  );
});

test("what was not looked at, trend, cautions and lines to sign are there", () => {
  const cells = sheetOf().rows.flat();
  for (const caution of Object.values(cautionMessages)) expect(cells).toContain(caution);
  expect(cells).toContain("All tests: Mean 6.00 %.");
  expect(cells).toContain("Reviewed by");
  expect(cells.join("\n")).toMatch(/Not looked at, because the sheet does not record it: .*leaks/);
});

test("the picture of a trend lies on blank rows below what it shows, high enough for it", () => {
  const sizes: Record<string, string> = { width: "720", height: "440" };
  const drawing = { getAttribute: (name: string) => sizes[name] } as unknown as SVGSVGElement;
  const left = ["Six mixes are drawn; one more is not."];
  const { rows, look } = sheetOf({}, true, { trends: [{ ...TREND, drawing }], left });
  expect(look.pictures).toMatchObject([{ width: 720, height: 440, title: "Air Mean 6.00 %." }]);
  const { row } = look.pictures![0]!;
  expect(rows[row - 1]).toEqual(["All tests: Mean 6.00 %."]);
  const below = rows.findIndex((cells, r) => r >= row && cells.length > 0);
  expect(rows[below]).toEqual(left);
  // Excel's rows are 20 pixels high in its usual font; of other programs 17 and more.
  expect((below - row) * 17).toBeGreaterThanOrEqual(440);
});

test("a page begins with the trends, and with each picture for which the last has no room", () => {
  const sizes: Record<string, string> = { width: "720", height: "440" };
  const drawing = { getAttribute: (name: string) => sizes[name] } as unknown as SVGSVGElement;
  const trends = Array.from({ length: 5 }, () => ({ ...TREND, drawing }));
  const { rows, look } = sheetOf({}, true, { trends, left: [] });
  const [first, ...others] = look.breaks!;
  expect(rows[first!]).toEqual([say("trend-heading")]);
  expect(others.length).toBeGreaterThan(0);
  for (const row of others) expect(rows[row]).toEqual(["All tests: Mean 6.00 %."]);
  // Rows of 20 pixels, 660 to a page whose columns fit: letter and A4, lying, less the margins.
  const width = look.widths.reduce((sum, each) => sum + each, 0) * 7;
  const room = (660 * Math.max(1, width / 960)) / 20;
  const ends = look.pictures!.map(({ row }) => row + 440 / 17);
  for (const [i, from] of look.breaks!.entries()) {
    const until = look.breaks![i + 1] ?? Infinity;
    const last = ends.filter((end) => end > from && end < until).at(-1)!;
    expect(last - from).toBeLessThanOrEqual(room);
  }
});

test("a finding has the decision of its reviewer below it", () => {
  const foamFound = checked.result.findings.find(({ rule }) => rule === "foam-over-limit")!;
  const entry: ReviewEntry = {
    ...subjectOf(foamFound, checked),
    line: 2,
    time: "2026-06-12 09:00:00",
    finding: "",
    decision: "accepted",
    reason: "repeated at once",
    oldValue: "",
    newValue: "",
    initials: "AB",
  };
  const review = { ...NO_REVIEW, there: true, entries: [entry] };
  const { rows } = sheetOf({ review });
  const foam = rows.findIndex((row) => String(row[3]).includes("3 divisions of foam"));
  expect(rows[foam]!.slice(0, 2)).toEqual(["F3", "Void"]);
  expect(rows[foam + 1]).toEqual([
    null,
    null,
    null,
    "Reviewer's decision: Accepted, AB, 2026-06-12 09:00:00: repeated at once",
  ]);
});

test("on a sheet no sentence is longer than the paper is wide, and no word is parted", () => {
  const room = 140;
  const [whole, broken] = [sheetOf({}, false), sheetOf({}, true)];
  const texts = (sheet: ReportSheet) =>
    sheet.rows.flat().filter((cell) => typeof cell === "string");
  expect(texts(whole).some((text) => text.length > room)).toBe(true);
  expect(texts(broken).every((text) => text.length <= room)).toBe(true);
  expect(texts(broken).join(" ").split(/\s+/)).toEqual(texts(whole).join(" ").split(/\s+/));
});
