import { checkTable } from "../../../src/fieldsheet/check-table";
import type { CellValue } from "../../../src/measure/cell-value";
import { problemGroups } from "../../../src/pane/state/problem-groups";
import { problemsOf } from "../../../src/pane/state/problems";
import { whatIsNew } from "../../../src/pane/state/what-is-new";

const HEADERS = [
  "Sample",
  "First reading",
  "Second reading",
  "Alcohol (oz)",
  "Foam",
  "Reported air",
];
const check = (...rows: CellValue[][]) => checkTable({ headers: HEADERS, rows });
/** Each group as "rule@row" of its problems; rows counted from 0. */
const shown = (groups: readonly ReturnType<typeof problemsOf>[]) =>
  groups.map((group) => group.map(({ finding: { rule, row } }) => `${rule}@${row}`));

// Derived: 6 read twice with 64 oz is 6 − 0.6 = 5.4, reported 5.5; 6 forgets the correction (memory: C173 Table 1).
const WRONG = ["S-1", 6, 6, 64, 1, 6];
const FOAM = ["S-2", 6, 6, 16, 3, null];
const NO_ALCOHOL = ["S-3", 6, 6, null, 1, null];

test("what explains a finding is kept with it and is no problem of its own", () => {
  const { findings } = check(WRONG);
  const wrong = problemsOf(findings).find(({ finding }) => finding.rule === "reported-air-wrong")!;
  expect(wrong.explanations.map(({ rule }) => rule)).toContain("correction-forgotten");
  expect(problemsOf(findings).length + wrong.explanations.length).toBe(findings.length);
});

test("together by test or by rule, in the order of the sheet or the gravest first", () => {
  const problems = problemsOf(
    check(NO_ALCOHOL, FOAM, [...NO_ALCOHOL.slice(0, 4), 3, null]).findings,
  );
  const first = (groups: readonly ReturnType<typeof problemsOf>[]) => shown(groups)[0];
  expect(first(problemGroups(problems, "test", "row"))).toEqual(["alcohol-missing@0"]);
  expect(first(problemGroups(problems, "test", "weight"))).toContain("foam-over-limit@1");
  const byRule = shown(problemGroups(problems, "rule", "weight"));
  expect(byRule[0]).toEqual(["foam-over-limit@1", "foam-over-limit@2"]);
  const grouped = [
    problemGroups(problems, "test", "weight"),
    problemGroups(problems, "rule", "row"),
  ];
  for (const groups of grouped) expect(groups.flat()).toHaveLength(problems.length);
});

test("a second check tells what is new and what is gone, also where rows have moved", () => {
  const before = check(FOAM, NO_ALCOHOL);
  const mended = check(["S-0", 6, 6, 16, 1, null], NO_ALCOHOL, [...FOAM.slice(0, 4), 1, null]);
  expect(whatIsNew(before, before)).toMatchObject({ gone: 0 });
  const { fresh, gone } = whatIsNew(before, mended);
  expect([...fresh].map(({ rule }) => rule)).not.toContain("alcohol-missing");
  expect(gone).toBeGreaterThan(0);
  const worse = whatIsNew(mended, before);
  expect([...worse.fresh].map(({ rule }) => rule)).toContain("foam-over-limit");
});
