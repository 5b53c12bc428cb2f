import fc from "fast-check";
import type { Finding } from "../../src/fieldsheet/finding";
import { entriesOfSheet, sheetsNotThere } from "../../src/review/entries-of-sheet";
import type { Decision, ReviewEntry, Subject } from "../../src/review/review-entry";
import { reviewedFindings, type FindingOnSheet } from "../../src/review/reviewed-findings";

/* Expected here is what is promised of a review: matched by sample, rule and value; a changed value opens again. */

const SUBJECT: Subject = {
  sheet: "Loads",
  sample: "S-09",
  place: "N11",
  rule: "reported-air-wrong",
  column: "Reported air (%)",
  value: "5.5",
  figures: "air 5.75",
};

function found(change: Partial<Subject> = {}, alone = true): FindingOnSheet {
  const finding = { rule: change.rule ?? SUBJECT.rule } as Finding;
  return { finding, subject: { ...SUBJECT, ...change }, alone };
}

let line = 1;
function entry(decision: Decision, change: Partial<ReviewEntry> = {}): ReviewEntry {
  line += 1;
  const time = "2026-05-31 14:05:09";
  const said = { finding: "", reason: "seen", oldValue: "", newValue: "", initials: "KR" };
  return { ...SUBJECT, ...said, time, decision, line, ...change };
}

const decided = (finding: FindingOnSheet, ...entries: ReviewEntry[]) =>
  reviewedFindings([finding], entries).of(finding.finding);

test("a finding of which nothing was said is open", () => {
  expect(decided(found())).toEqual({ decision: "open" });
});

test("an acceptance holds for the same sample, rule, column, value and numbers", () => {
  const accepted = entry("accepted");
  expect(decided(found(), accepted)).toEqual({ decision: "accepted", entry: accepted });
});

test.each<[string, Partial<Subject>]>([
  ["sample", { sample: "S-10" }],
  ["rule", { rule: "near-limit" }],
  ["column", { column: "Air" }],
])("it does not hold for another %s", (_, change) => {
  expect(decided(found(change), entry("accepted"))).toEqual({ decision: "open" });
});

test.each<[string, Partial<Subject>]>([
  ["value", { value: "5.25" }],
  ["numbers, though its own cell is the same", { figures: "air 7" }],
])("a finding with another %s is open again, and it is said what was accepted", (_, change) => {
  const accepted = entry("accepted");
  expect(decided(found(change), accepted)).toEqual({ decision: "open", reopened: accepted });
});

test("a value that comes back is accepted as before", () => {
  const [first, second] = [entry("accepted"), entry("accepted", { value: "5.25" })];
  expect(decided(found(), first, second).decision).toBe("accepted");
});

test("of a sample that one test has it holds wherever the test stands", () => {
  expect(decided(found({ place: "N40" }), entry("accepted")).decision).toBe("accepted");
});

test("of a sample that several tests have, or none, it holds for its own place only", () => {
  const [here, there] = [found({}, false), found({ place: "N12" }, false)];
  const { of, accepted } = reviewedFindings([here, there], [entry("accepted")]);
  expect([of(here.finding), of(there.finding)].map(({ decision }) => decision)).toEqual([
    "accepted",
    "open",
  ]);
  expect(accepted).toBe(1);
});

test("the later word holds, however the review was sorted", () => {
  const accepted = entry("accepted", { time: "2026-05-31 14:05:09" });
  const opened = entry("open", { time: "2026-06-02 08:00:00" });
  fc.assert(
    fc.property(fc.shuffledSubarray([accepted, opened], { minLength: 2 }), (entries) => {
      expect(decided(found(), ...entries)).toEqual({ decision: "open", entry: opened });
    }),
  );
});

test("of the same moment, the lower line is the later word", () => {
  const [accepted, opened] = [entry("accepted"), entry("open")];
  expect(decided(found(), opened, accepted).entry).toBe(opened);
});

test("a corrected finding that is gone is counted so; one that stands as before is open", () => {
  const corrected = entry("corrected", { oldValue: "5.5", newValue: "5.75" });
  expect(reviewedFindings([], [corrected]).corrected).toEqual([corrected]);
  const again = reviewedFindings([found()], [corrected]);
  expect(again.corrected).toEqual([]);
  expect(decided(found(), corrected)).toEqual({ decision: "open", entry: corrected });
});

test("what was accepted and is gone is known, until it is noted as corrected", () => {
  const accepted = entry("accepted");
  expect(reviewedFindings([], [accepted]).gone).toEqual([accepted]);
  const corrected = entry("corrected", { place: "N30" });
  expect(reviewedFindings([], [accepted, corrected]).gone).toEqual([]);
});

test("whatever stands in the review, every finding is either open or accepted, and counted once", () => {
  const texts = fc.constantFrom("a", "b", "");
  const subjects = fc.record({ sample: texts, place: texts, rule: texts, value: texts });
  const findings = fc.array(fc.tuple(subjects, fc.boolean()), { maxLength: 8 });
  const entries = fc.array(
    fc.tuple(subjects, fc.constantFrom<Decision>("accepted", "corrected", "open")),
    { maxLength: 12 },
  );
  fc.assert(
    fc.property(findings, entries, (some, written) => {
      const there = some.map(([change, alone]) => found(change, alone));
      const made = reviewedFindings(
        there,
        written.map(([change, decision]) => entry(decision, change)),
      );
      const accepted = there.filter(({ finding }) => made.of(finding).decision === "accepted");
      expect(made.accepted).toBe(accepted.length);
      for (const { finding } of accepted) expect(made.of(finding).entry!.rule).toBe(finding.rule);
    }),
  );
});

describe("a renamed sheet", () => {
  const renamed = (from: string, to: string, time: string) =>
    entry("renamed", { oldValue: from, sheet: to, time });

  test("has the decisions of its earlier names once that is written down", () => {
    const entries = [entry("accepted", { sheet: "Sheet1", time: "2026-05-01 08:00:00" })];
    expect(entriesOfSheet(entries, "May")).toEqual([]);
    expect(sheetsNotThere(entries, ["May"])).toEqual(["Sheet1"]);
    const known = [...entries, renamed("sheet1", "May", "2026-05-02 08:00:00")];
    expect(entriesOfSheet(known, "MAY")).toEqual(entries);
    expect(sheetsNotThere(known, ["May"])).toEqual([]);
    const twice = [...known, renamed("May", "May 2026", "2026-05-03 08:00:00")];
    expect(entriesOfSheet(twice, "May 2026")).toEqual(entries);
  });

  test("leaves a later sheet of its old name its own decisions", () => {
    const early = entry("accepted", { sheet: "Week", time: "2026-05-01 08:00:00" });
    const late = entry("accepted", { sheet: "Week", time: "2026-05-09 08:00:00" });
    const entries = [early, renamed("Week", "Week 1", "2026-05-05 08:00:00"), late];
    expect(entriesOfSheet(entries, "Week 1")).toEqual([early]);
    expect(entriesOfSheet(entries, "Week")).toEqual([late]);
  });
});
