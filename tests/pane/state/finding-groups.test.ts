import type { CellValue } from "../../../src/measure/cell-value";
import { findingGroups, type FindingGroup } from "../../../src/pane/state/finding-groups";
import { whatIsNew } from "../../../src/pane/state/what-is-new";
import { checkedTable } from "../../fieldsheet/checked";

const HEADERS = [
  "Sample",
  "First reading",
  "Second reading",
  "Alcohol (oz)",
  "Foam",
  "Reported air",
];
const check = (...rows: CellValue[][]) => checkedTable({ headers: HEADERS, rows });
/** Each group as "rule@row" of its problems; rows counted from 0. */
const shown = (groups: readonly FindingGroup[]) =>
  groups.map((group) => group.map(({ rule, record }) => `${rule}@${record}`));

const FOAM = ["S-2", 6, 6, 16, 3, null];
const NO_ALCOHOL = ["S-3", 6, 6, null, 1, null];

test("together by test or by rule, in the order of the sheet or the gravest first", () => {
  const problems = check(NO_ALCOHOL, FOAM, [...NO_ALCOHOL.slice(0, 4), 3, null]).findings;
  const first = (groups: readonly FindingGroup[]) => shown(groups)[0];
  expect(first(findingGroups(problems, "test", "row"))).toEqual(["alcohol-missing@0"]);
  expect(first(findingGroups(problems, "test", "weight"))).toContain("foam-over-limit@1");
  const byRule = shown(findingGroups(problems, "rule", "weight"));
  expect(byRule[0]).toEqual(["foam-over-limit@1", "foam-over-limit@2"]);
  const grouped = [
    findingGroups(problems, "test", "weight"),
    findingGroups(problems, "rule", "row"),
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
