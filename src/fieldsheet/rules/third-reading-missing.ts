import { testRule } from "../rule";

/** The first two readings differ, and nobody read a third time. */
export const thirdReadingMissing = testRule({
  id: "third-reading-missing",
  weight: "error",
  needs: ["first", "second"],
  says: ["third-reading-missing"],
  basis:
    "When the second reading differs from the first by more than 0.25 %, the meter is rolled once more and read a third time (common practice).",
  look({ state, readings, values: { first, second } }, sheet) {
    if (state === "void" || readings?.next !== "third reading") return undefined;
    const field = sheet.has("third") ? "third" : "second";
    return { field, values: { first: first!, second: second! } };
  },
});
