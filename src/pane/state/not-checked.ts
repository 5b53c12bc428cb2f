import type { CheckResult, NotLookedAt } from "../../fieldsheet/check-result";
import { RULES } from "../../fieldsheet/rules";
import { say } from "../../messages/pane-catalogue";
import { FIELDS, type FieldId } from "../../reading/fields";

/** What a check could not look at, since the sheet has no place for it, in words. */
export interface NotChecked {
  /** What the method asks for. */
  readonly askedFor: readonly string[];
  /** Fields of further rules. */
  readonly others: readonly string[];
}

const WORDS: Readonly<Record<NotLookedAt, readonly [words: string, field?: FieldId]>> = {
  "second reading": [say("not-checked-second"), "second"],
  alcohol: [say("not-checked-alcohol"), "alcohol"],
  foam: [say("not-checked-foam"), "foam"],
  "time to settle": [say("not-checked-settle"), "settle"],
  "undisturbed concrete": [say("not-checked-packed"), "packed"],
  leak: [say("not-checked-leak"), "leak"],
  limits: [say("not-checked-limits")],
};

/** What was not checked. */
export function notChecked({ columns, notLookedAt }: CheckResult): NotChecked {
  const asked = new Set(notLookedAt.map((what) => WORDS[what][1]));
  const needed = RULES.flatMap(({ needs, needsOneOf = [] }) =>
    needsOneOf.some((field) => columns[field]) ? needs : [...needs, ...needsOneOf],
  );
  const missing = new Set(needed.filter((field) => !columns[field] && !asked.has(field)));
  return {
    askedFor: notLookedAt.map((what) => WORDS[what][0]),
    others: [...missing].map((field) => FIELDS[field].label),
  };
}
