import { whatIf } from "../../src/acceptance/what-if";
import { trends } from "../../src/acceptance/trend";
import { borderlineTestOf } from "../../src/fieldsheet/borderline-row";
import { checkTable } from "../../src/fieldsheet/check-table";
import { trendTestsOf } from "../../src/fieldsheet/trend-tests";
import { resultOf } from "../check-values/result-of";

const HEADERS = [
  "Load",
  "Date",
  "Mix",
  "First reading",
  "Second reading",
  "Cups",
  "Alcohol (oz)",
  "Foam",
];
const ROWS = [
  ["L1", "2026-05-31", "LW-4", 7.5, 7.75, 0, 48, 0],
  ["L2", "2026-05-31", "lw-4", 6.25, 6.25, 0, 16, 3],
  ["L3", 46174, "LW-4", 8.25, 8.5, 3, 32, 0],
  ["L4", "2026-06-01", "LW-4", 6, 6, 0, null, 0],
  [null, null, null, null, null, null, null, null],
];
const checked = checkTable({ headers: HEADERS, rows: ROWS }, { low: 4.5, high: 7.5 });

test("a row is looked at with its own reading, cups, alcohol and limits (derived: 7.75 − 0.30)", () => {
  const test = borderlineTestOf(checked.rows[0]!.judged)!;
  expect(test).toMatchObject({
    reading: 7.75,
    cups: 0,
    alcohol: { amount: 48, unit: "oz" },
    limits: { low: 4.5, high: 7.5 },
  });
  expect(resultOf(whatIf(test)).air).toBe(7.5);
});

test("the check and the closer look give the same result and verdict", () => {
  const valid = checked.rows.filter(({ air }) => air !== undefined);
  expect(valid).toHaveLength(2);
  for (const { judged, air, specification } of valid) {
    expect(resultOf(whatIf(borderlineTestOf(judged)!))).toMatchObject({
      air,
      verdict: specification,
    });
  }
});

test("a row whose alcohol was not recorded has no result to look at, nor has a blank row", () => {
  expect(borderlineTestOf(checked.rows[3]!.judged)).toBeUndefined();
  expect(borderlineTestOf(checked.rows[4]!.judged)).toBeUndefined();
});

test("a sheet without alcohol begins at none, in the unit asked for", () => {
  const { rows } = checkTable({ headers: ["First reading", "Second reading"], rows: [[6, 6]] });
  expect(borderlineTestOf(rows[0]!.judged, "L")).toMatchObject({
    alcohol: { amount: 0, unit: "L" },
    reading: 6,
  });
});

test("a checked table becomes a trend: void, incomplete and blank rows are counted, not drawn", () => {
  const [trend, ...more] = trends(trendTestsOf(checked), "mix and day");
  expect(trend).toMatchObject({
    mix: "LW-4",
    day: "2026-05-31",
    leftOut: { void: 1, incomplete: 0, blank: 0 },
    points: [{ row: 0, name: "L1", value: 7.5, verdict: "within" }],
  });
  // Spreadsheets show day 46174 as 2026-06-01.
  expect(more.map(({ mix, day }) => [mix, day])).toEqual([
    ["LW-4", "2026-06-01"],
    ["", ""],
  ]);
  expect(more[0]).toMatchObject({
    points: [{ row: 2, value: 11.5, verdict: "above" }],
    leftOut: { void: 0, incomplete: 1, blank: 0 },
  });
});
