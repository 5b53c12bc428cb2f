import { mayRecordReadings } from "../may-record-readings";
import { sheetRule } from "../rule";

/** A sheet of results: none of its columns holds a reading. */
export const readingsNotInSheet = sheetRule({
  id: "readings-not-in-sheet",
  weight: "error",
  touchesEveryTest: true,
  needs: ["air"],
  says: ["readings-not-in-sheet"],
  basis:
    "Without a meter reading there is no result, and what is reported cannot be worked out again (from the definition of the method).",
  look({ all: tests }, sheet) {
    const tested = tests.some(({ blank, otherMethod }) => !blank && !otherMethod);
    return tested && !mayRecordReadings(sheet) ? [{ record: null, field: "air" }] : [];
  },
});
