import { readingsAgree } from "../../methods/volumetric-air/meter-reading";
import { READING_FIELDS } from "../../reading/fields";
import { mayStandUnread } from "../../reading/may-stand-unread";
import { singleReadingField } from "../judge-test";
import type { DecidedTest } from "../judged-test";
import { sheetRule } from "../rule";

/** Only one reading of each test is in the sheet, or a first and a final one that lie too far apart. */
export const agreementNotRecorded = sheetRule({
  id: "agreement-not-recorded",
  weight: "doubt",
  touchesEveryTest: true,
  needs: [],
  says: ["agreement-not-recorded", "readings-between-missing"],
  basis:
    "A reading is final when another, taken after rolling again, agrees with it within 0.25 % (a meter maker's manual, 2019, describing ASTM C173); one reading alone does not show that.",
  look({ all: rows }, sheet) {
    const field = singleReadingField(sheet);
    if (!field || READING_FIELDS.some((each) => mayStandUnread(sheet, each))) return [];
    if (field === "final" && sheet.has("first")) {
      const tests = rows.filter(readingsApart).length;
      return tests > 0
        ? [{ record: null, field, say: "readings-between-missing", values: { tests } }]
        : [];
    }
    const tested = rows.some(({ blank }) => !blank);
    return tested ? [{ record: null, field }] : [];
  },
});

/** Whether the final reading cannot be the second one, because the first does not agree with it. */
function readingsApart({ otherMethod, values: { first, final } }: DecidedTest): boolean {
  if (otherMethod || first === undefined || final === undefined) return false;
  return !readingsAgree(first, final);
}
