import type { FieldId } from "../../reading/fields";
import type { Rule } from "../rule";
import { alcoholUnitMissing } from "./alcohol-unit-missing";
import { notANumber } from "./not-a-number";

const TOLD_BY_OTHERS = [notANumber, alcoholUnitMissing];

/** A date, a time, a yes or no, a size or a name that cannot be read as one. */
export const cannotBeRead: Rule = {
  id: "cannot-be-read",
  weight: "error",
  needs: [],
  anyMethod: true,
  basis: "A cell that cannot be read one way only is not read at all (our own rule).",
  look(row, sheet) {
    const told = TOLD_BY_OTHERS.flatMap((rule) => rule.look?.(row, sheet) ?? []);
    return Object.entries(row.unreadable).flatMap(([name, problem]) => {
      const field = name as FieldId;
      if (told.some((remark) => remark.field === field)) return [];
      return [{ field, say: problem.issue.id, values: problem.values }];
    });
  },
};
