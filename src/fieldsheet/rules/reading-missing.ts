import { READING_FIELDS } from "../../reading/fields";
import { singleReadingField } from "../judge-test";
import { testRule } from "../rule";

/** A test without the reading that it begins with. */
export const readingMissing = testRule({
  id: "reading-missing",
  weight: "error",
  needs: [],
  needsOneOf: READING_FIELDS,
  says: ["reading-missing"],
  basis: "Without a meter reading there is no result (from the definition of the method).",
  look({ state, values, unreadable }, sheet) {
    const field = singleReadingField(sheet) ?? "first";
    if (state === "void" || values[field] !== undefined || unreadable[field]) return undefined;
    return { field: sheet.has(field) ? field : null };
  },
});
