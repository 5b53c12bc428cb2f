import { writtenDay, yearsAfter } from "../../measure/spreadsheet-day";
import { STANDARDISED_WITHIN_YEARS } from "../../methods/volumetric-air/apparatus";
import type { DecidedTest } from "../judged-test";
import { sheetRule } from "../rule";

/** The meter was last checked more than a year before the test. */
export const meterCheckOverdue = sheetRule({
  id: "meter-check-overdue",
  weight: "doubt",
  needs: ["date", "meterCheck"],
  says: ["meter-check-overdue"],
  basis: "A meter is standardised at least once a year (common practice).",
  look({ all: rows }) {
    const overdue = new Map<string, DecidedTest[]>();
    for (const row of rows) {
      const { date, meterCheck, meter = "" } = row.values;
      if (date === undefined || meterCheck === undefined) continue;
      if (date <= yearsAfter(meterCheck, STANDARDISED_WITHIN_YEARS)) continue;
      const sameCheck = `${meterCheck} ${meter}`;
      const tests = overdue.get(sameCheck);
      if (tests) tests.push(row);
      else overdue.set(sameCheck, [row]);
    }
    // One overdue check is one cause, however many tests rest on it.
    return [...overdue.values()].map((tests) => {
      const { record, values } = tests[0]!;
      const days = { checked: writtenDay(values.meterCheck!), tested: writtenDay(values.date!) };
      return { record, field: "meterCheck", values: { ...days, tests: tests.length } };
    });
  },
});
