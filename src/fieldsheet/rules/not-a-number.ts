import { FIELDS, type FieldId, type FieldKind } from "../../reading/fields";
import type { Rule } from "../rule";

const NUMBER_KINDS: readonly FieldKind[] = [
  "number",
  "measured",
  "tolerance",
  "minutes",
  "seconds",
  "alcohol",
  "water",
  "aggregate-size",
];
const NUMBER_PROBLEMS = ["not-a-number", "alcohol-not-an-amount", "comma-is-unclear", "cell-error"];

/** Something other than a number where a number belongs. */
export const notANumber: Rule = {
  id: "not-a-number",
  weight: "error",
  needs: [],
  anyMethod: true,
  basis: "A result is worked out from numbers only; nothing is guessed from text (our own rule).",
  look({ unreadable }) {
    return Object.entries(unreadable).flatMap(([name, problem]) => {
      const field = name as FieldId;
      if (!NUMBER_KINDS.includes(FIELDS[field].kind) || !NUMBER_PROBLEMS.includes(problem.id))
        return [];
      return [{ field, say: problem.issue.id, values: problem.values }];
    });
  },
};
