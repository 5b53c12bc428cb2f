import type { Trend, TrendGrouping, TrendTest } from "../acceptance/trend";
import type { CheckResult, RowResult } from "../fieldsheet/check-result";
import { shownValue } from "../measure/cell-value";
import { say } from "../messages/catalogue";

/** Day 0 of spreadsheet dates. */
const DAY_ZERO = Date.UTC(1899, 11, 30);
const DAY_MS = 86_400_000;

/** The tests of a checked table on their way into a trend. */
export function trendTests({ rows }: CheckResult): TrendTest[] {
  return rows.map(({ row, sample, test, air, judged }) => ({
    row,
    name: sample,
    test,
    value: air,
    limits: judged.limits,
    mix: judged.values.mix,
    day: dayOf(judged),
  }));
}

/** A day is shown year first; one that cannot be read as it stands in the sheet. */
function dayOf({ values, cells }: RowResult["judged"]): string | undefined {
  if (values.date !== undefined)
    return new Date(DAY_ZERO + values.date * DAY_MS).toISOString().slice(0, 10);
  return shownValue(cells.date).trim() || undefined;
}

/** By what the tests of a table can be parted. */
export function groupingsFor({ columns }: CheckResult): TrendGrouping[] {
  const { mix, date } = columns;
  return [
    "all",
    ...(mix ? ["mix" as const] : []),
    ...(date ? ["day" as const] : []),
    ...(mix && date ? ["mix and day" as const] : []),
  ];
}

/** The name of a group of tests. */
export function groupName({ mix, day }: Trend): string {
  const parts = [
    ...(mix === undefined ? [] : [mix || say("trend-no-mix")]),
    ...(day === undefined ? [] : [day || say("trend-no-day")]),
  ];
  return parts.join(", ") || say("trend-all-tests");
}

/** What a point is called: by its sample, else by its place in the table. */
export function pointName({ name, row }: Pick<TrendTest, "name" | "row">): string {
  return name || say("trend-test-number", { number: row + 1 });
}
