import { FIELDS, type FieldId } from "../fields";
import type { Rule } from "../rule";

/** A date, a time, a yes or no, or a name that cannot be read as one. */
export const cannotBeRead: Rule = {
  id: "cannot-be-read",
  weight: "error",
  needs: [],
  basis: "A cell that cannot be read one way only is not read at all (our own rule).",
  look({ unreadable }) {
    return Object.entries(unreadable).flatMap(([name, problem]) => {
      const field = name as FieldId;
      const isWord = ["text", "yes-no", "date", "minute-of-day"].includes(FIELDS[field].kind);
      return isWord ? [{ field, say: problem.id, values: problem.values }] : [];
    });
  },
};
