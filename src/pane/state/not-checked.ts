import type { CheckResult } from "../../fieldsheet/check-result";
import { RULES } from "../../fieldsheet/rules";
import { FIELDS } from "../../reading/fields";

/** Labels of the fields that further rules need, besides what the method asks for, and the sheet lacks. */
export function fieldsNotThere({ columns, notLookedAt }: CheckResult): string[] {
  const asked = new Set<string>(
    notLookedAt.map((what) => (what === "second-reading" ? "second" : what)),
  );
  const needed = RULES.flatMap(({ needs, needsOneOf = [] }) =>
    needsOneOf.some((field) => columns[field]) ? needs : [...needs, ...needsOneOf],
  );
  const missing = new Set(needed.filter((field) => !columns[field] && !asked.has(field)));
  return [...missing].map((field) => FIELDS[field].label);
}
