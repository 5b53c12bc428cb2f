import type { CellValue } from "../../src/measure/cell-value";
import { checkedBlock } from "../fieldsheet/checked";

/*
 * What stands beside a table of tests behind a blank column, by what a careful reader makes of it: groups of
 * columns are often written so; what formulas make of a table, and another table, are none of it. Our own.
 */

type Row = readonly CellValue[];
const READINGS: Row[] = [
  ["Sample", "Reading 1", "Reading 2", "Alcohol (oz)"],
  ["S-1", 5.5, 5.5, 48],
  ["S-2", 6, 6.25, 48],
];
const beside = (...pieces: Row[][]): Row[] =>
  READINGS.map((row, i) => pieces.reduce<Row>((all, piece) => [...all, null, ...piece[i]!], row));

const FOAM: Row[] = [["Foam"], [3], [1]];
const OUTCOME: Row[] = [
  ["Test", "Air content", "Specification", "Findings"],
  ["void", "", "", "3 divisions of foam"],
  ["valid", 6, "within", ""],
];
const LIMITS: Row[] = [
  ["Low", "High"],
  [4.5, 7.5],
  [4.5, 7.5],
];
const OTHER_TABLE: Row[] = [
  ["Sample", "Reading 1", "Reading 2", "Alcohol (oz)"],
  ["T-1", 7, 7, 16],
  ["T-2", 8, 8, 16],
];

const said = (rows: Row[]) => {
  const { results, findings } = checkedBlock(rows);
  return {
    states: results.map(({ state }) => state),
    apart: findings.filter(({ say }) => /apart$/.test(say)).map(({ say, column }) => [say, column]),
    rules: findings.flatMap(({ rule, record }) => (record === null ? [] : [rule])),
  };
};

test.each<[what: string, rows: Row[], states: string[], apart: unknown[]]>([
  ["a group of its own columns is read", beside(LIMITS), ["valid", "valid"], []],
  [
    "a group with one column that the table has already is read",
    beside(
      [["Date"], ["2026-06-01"], ["2026-06-01"]],
      [
        ["Date", "Slump (in)", "Foam"],
        ["2026-06-01", 4, 3],
        ["2026-06-01", 4, 1],
      ],
    ),
    ["void", "valid"],
    [],
  ],
  ["what decides a test is read", beside(FOAM), ["void", "valid"], []],
  [
    "what our functions made of it is not",
    beside(OUTCOME),
    ["valid", "valid"],
    [["columns-apart", 5]],
  ],
  [
    "foam behind what they made of it is",
    beside(OUTCOME, FOAM),
    ["void", "valid"],
    [["columns-apart", 5]],
  ],
  [
    "a second air content alone is not",
    beside([["Reported air"], [5.25], [6]], [["Reported air"], [9], [9]]),
    ["valid", "valid"],
    [["column-apart", 7]],
  ],
  [
    "another table is not, and is named",
    beside(OTHER_TABLE),
    ["valid", "valid"],
    [["readings-apart", 5]],
  ],
])("%s", (_, rows, states, apart) => {
  expect(said(rows)).toMatchObject({ states, apart });
});

test("the word void that a function wrote is not the tester's", () => {
  expect(said(beside(OUTCOME)).rules).not.toContain("called-void");
  expect(said(beside(FOAM, OUTCOME)).rules).not.toContain("called-void");
});

test("limits in a group of their own are compared with", () => {
  const { results } = checkedBlock(beside(LIMITS));
  expect(results.map(({ specification }) => specification)).toEqual(["within", "within"]);
});
