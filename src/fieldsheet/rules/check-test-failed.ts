import { isOutside } from "../failed-and-check-tests";
import { sheetRule } from "../rule";

/** The check test lies outside the limits as well. */
export const checkTestFailed = sheetRule({
  id: "check-test-failed",
  weight: "doubt",
  needs: [],
  needsOneOf: ["sample", "load", "checkOf"],
  says: ["check-test-failed"],
  basis:
    "By the check-test rule of ASTM C94 a second result outside the limits fails the concrete, and the two are not averaged (a trade article quoting it; C94-98). Other rules average them (UFGS 03300A, older text): the specification says which.",
  *look(tests, sheet) {
    const field = sheet.has("air") ? ("air" as const) : null;
    for (const { first, check } of yield* tests.failures()) {
      if (!check || !isOutside(check)) continue;
      yield { record: check.record, field, values: { first: first.air!, check: check.air! } };
    }
  },
});
