import type { TrendTest } from "../acceptance/trend";
import { writtenDay } from "../measure/date-and-time";
import type { CheckResult } from "./check-result";

/** The tests of a checked table as a trend takes them, in the order of the sheet. */
export function trendTestsOf({ results }: CheckResult): readonly TrendTest[] {
  return results.map(({ record, sample, test, air, judged }) => ({
    record,
    name: sample,
    test,
    value: air,
    limits: judged.limits,
    mix: judged.values.mix,
    day: judged.values.date === undefined ? undefined : writtenDay(judged.values.date),
  }));
}
