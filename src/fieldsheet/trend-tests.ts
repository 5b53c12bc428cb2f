import type { TrendTest } from "../acceptance/trend";
import { writtenDay } from "../measure/spreadsheet-day";
import type { CheckResult } from "./check-result";

/** The tests of a checked table as a trend takes them, in the order of the sheet. */
export function trendTestsOf({ results }: CheckResult): readonly TrendTest[] {
  return results.map(({ record, sample, state, air, limits, values }) => ({
    record,
    name: sample,
    test: state,
    value: air,
    limits,
    mix: values.mix,
    day: values.date === undefined ? undefined : writtenDay(values.date),
  }));
}
