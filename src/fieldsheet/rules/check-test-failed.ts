import { checkedFailures, isOutside } from "../check-tests";
import type { Rule } from "../rule";

/** The check test lies outside the limits as well. */
export const checkTestFailed: Rule = {
  id: "check-test-failed",
  weight: "doubt",
  needs: [],
  needsOneOf: ["sample", "load", "checkOf"],
  basis:
    "A second result outside the limits fails the concrete; the two are not averaged (a trade article quoting ASTM C94; C94-98).",
  lookAcross(rows, sheet) {
    return checkedFailures(rows).flatMap(({ first, check }) => {
      if (!check || !isOutside(check)) return [];
      const values = { first: first.result!.air, check: check.result!.air };
      return [{ row: check.row, field: sheet.has("air") ? "air" : null, values }];
    });
  },
};
