import type { FieldId } from "../../reading/fields";
import { sheetRule } from "../rule";
import type { TestResult } from "../test-result";

const LIMIT_FIELDS = ["low", "high", "target", "tolerance"] as const satisfies readonly FieldId[];

/** Some tests have limits in their rows, and others none, so that these were compared with nothing. */
export const limitsInSomeRows = sheetRule({
  id: "limits-in-some-rows",
  weight: "note",
  needs: [],
  needsOneOf: LIMIT_FIELDS,
  says: ["limits-in-some-rows"],
  basis:
    "Limits that stand once for many rows, in merged cells or in the first of them, are in that one row for whoever reads cells; a blank is not read as the cell above (our own rule).",
  look({ all }, sheet) {
    const valid = all.filter(({ state }) => state === "valid");
    const without = valid.filter(hasNoLimits).map(({ record }) => record);
    if (without.length === 0 || without.length === valid.length) return [];
    const field = LIMIT_FIELDS.find((each) => sheet.has(each))!;
    return [{ record: null, field, values: { count: without.length }, behind: without }];
  },
});

/** Limits that cannot be read, or cross, are told at their own cells. */
function hasNoLimits({ limits, unreadable }: TestResult): boolean {
  const { low, high, unread, crossed } = limits;
  const given = low !== undefined || high !== undefined || unread || crossed;
  return !given && LIMIT_FIELDS.every((field) => !unreadable[field]);
}
