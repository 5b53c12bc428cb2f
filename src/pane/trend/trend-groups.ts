import type { Trend, TrendGrouping, TrendTest } from "../../acceptance/trend";
import type { CheckResult } from "../../fieldsheet/check-result";
import { inLine, say } from "../../messages/pane-catalogue";

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
    ...(day === undefined ? [] : [day || (mix === undefined ? say : inLine)("trend-no-day")]),
  ];
  return parts.join(", ") || say("trend-all-tests");
}

/** What a point is called: by its sample, else by its place in the table. */
export function pointName({ name, record }: Pick<TrendTest, "name" | "record">): string {
  return name || say("trend-test-number", { number: record + 1 });
}
