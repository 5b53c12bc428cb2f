import { writtenDay } from "../../../src/measure/spreadsheet-day";
import { daysOf, testsInScope, weeksOf } from "../../../src/pane/report/report-scope";
import { checkedSheet } from "./checked-sheet";

const { result } = checkedSheet([
  ["Sample", "Date", "First reading", "Second reading", "Alcohol (oz)"],
  ["L-1", "2026-06-10", 6, 6, 16],
  ["L-2", "2026-06-12", 6, 6, 16],
  [null, null, null, null, null],
  ["L-3", "2026-06-15", 6, 6, 16],
  ["L-4", "some day", 6, 6, 16],
  ["L-5", "2026-06-10", 6, 6, 16],
]);
const samples = (scope: Parameters<typeof testsInScope>[1]) =>
  testsInScope(result, scope).tests.map(({ sample }) => sample);

// By the calendar of June 2026 the 10th is a Wednesday, the 12th a Friday and the 15th a Monday.
test("days and weeks are those on which tests were made, weeks from Monday on", () => {
  expect(daysOf(result).map(writtenDay)).toEqual(["2026-06-10", "2026-06-12", "2026-06-15"]);
  expect(weeksOf(result).map(writtenDay)).toEqual(["2026-06-08", "2026-06-15"]);
});

test("a report is of all tests, of one, of a day or of a week", () => {
  const [wednesday] = daysOf(result);
  const [monday] = weeksOf(result);
  expect(samples({ kind: "all" })).toEqual(["L-1", "L-2", "L-3", "L-4", "L-5"]);
  expect(samples({ kind: "test", record: 3 })).toEqual(["L-3"]);
  expect(samples({ kind: "day", day: wednesday! })).toEqual(["L-1", "L-5"]);
  expect(samples({ kind: "week", monday: monday! })).toEqual(["L-1", "L-2", "L-5"]);
});

test("tests that are left out are counted, and those without a date that can be read apart", () => {
  const [day] = daysOf(result);
  expect(testsInScope(result, { kind: "day", day: day! })).toMatchObject({ undated: 1, others: 3 });
  expect(testsInScope(result, { kind: "test", record: 0 })).toMatchObject({
    undated: 0,
    others: 4,
  });
});
