import { writtenDay } from "../../measure/spreadsheet-day";
import type { DecidedTest } from "../judged-test";
import { sheetRule } from "../rule";

/** A meter that failed its check: its tests since the last check that it passed are in doubt. */
export const meterFoundOut = sheetRule({
  id: "meter-found-out",
  weight: "doubt",
  needs: ["date", "meterCheck", "meterFault"],
  says: ["meter-found-out", "meter-found-out-since-ever"],
  basis:
    "What a meter was off by when it failed its check, it may have been off by since the last check that it passed; those results are looked at again (common practice of quality systems).",
  look({ all }) {
    const byMeter = new Map<string, DecidedTest[]>();
    for (const test of all) {
      const { meterCheck, date, meter = "" } = test.values;
      if (test.blank || meterCheck === undefined || date === undefined) continue;
      const tests = byMeter.get(meter);
      if (tests) tests.push(test);
      else byMeter.set(meter, [test]);
    }
    return [...byMeter.values()].flatMap((tests) => failuresOf(tests));
  },
});

function failuresOf(tests: readonly DecidedTest[]) {
  const checksThat = (failed: boolean) => [
    ...new Set(
      tests
        .filter(({ values }) => (values.meterFault ?? false) === failed)
        .map(({ values }) => values.meterCheck!),
    ),
  ];
  const good = checksThat(false);
  return checksThat(true).map((failed) => {
    const before = good.filter((check) => check < failed);
    const since = before.length > 0 ? Math.max(...before) : undefined;
    const next = Math.min(...good.filter((check) => check > failed), Infinity);
    const doubtful = tests.filter(
      ({ values: { date } }) => date! >= (since ?? -Infinity) && date! < next,
    );
    const first = tests.find(
      ({ values }) => values.meterCheck === failed && values.meterFault === true,
    )!;
    const values = { failed: writtenDay(failed), tests: doubtful.length };
    return since === undefined
      ? ({
          record: first.record,
          field: "meterFault",
          say: "meter-found-out-since-ever",
          values,
        } as const)
      : ({
          record: first.record,
          field: "meterFault",
          values: { ...values, since: writtenDay(since) },
        } as const);
  });
}
