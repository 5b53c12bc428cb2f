import { sheetRule } from "../rule";

/** A result outside the limits that no check test followed. */
export const checkTestDue = sheetRule({
  id: "check-test-due",
  weight: "doubt",
  needs: [],
  needsOneOf: ["sample", "load", "checkOf"],
  says: ["check-test-due"],
  basis:
    "By the check-test rule of ASTM C94 a result outside the limits calls at once for a check test on another portion of the same sample (a trade article quoting it; C94-98). None is due where the load was rejected or sent back, or adjusted and tested again.",
  *look(tests, sheet) {
    const field = sheet.has("sample") ? ("sample" as const) : null;
    for (const { first, check, settled } of yield* tests.failures()) {
      if (!check && !settled) yield { record: first.record, field };
    }
  },
});
