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
  look({ failures }, sheet) {
    return failures.flatMap(({ first, check }) => {
      if (!check || !isOutside(check)) return [];
      const values = { first: first.result!.air, check: check.result!.air };
      return [{ record: check.record, field: sheet.has("air") ? "air" : null, values }];
    });
  },
});
