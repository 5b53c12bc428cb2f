import type { CheckResult } from "../../fieldsheet/check-result";
import { RULES } from "../../fieldsheet/rules";
import type { FieldId } from "../../reading/fields";

/** The fields that further rules need, besides what the method asks for, and the sheet lacks. */
export function fieldsNotThere({ columns, given, notLookedAt }: CheckResult): FieldId[] {
  const isThere = (field: FieldId) => columns[field] !== undefined || given.has(field);
  const asked = new Set<string>(
    notLookedAt.map((what) => (what === "second-reading" ? "second" : what)),
  );
  const needed = RULES.flatMap(({ needs, needsOneOf = [] }) =>
    needsOneOf.some(isThere) ? needs : [...needs, ...needsOneOf],
  );
  return [...new Set(needed.filter((field) => !isThere(field) && !asked.has(field)))];
}
