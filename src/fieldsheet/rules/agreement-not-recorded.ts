import { singleReadingField } from "../judge-row";
import type { Rule } from "../rule";

/** Only one reading of each test is in the sheet. */
export const agreementNotRecorded: Rule = {
  id: "agreement-not-recorded",
  weight: "doubt",
  needs: [],
  basis:
    "A reading is final when another, taken after rolling again, agrees with it within 0.25 % (a meter maker's manual, 2019, describing ASTM C173); one reading alone does not show that.",
  lookAcross(rows, sheet) {
    const field = singleReadingField(sheet);
    const tested = rows.some(({ blank }) => !blank);
    return tested && field ? [{ row: null, field }] : [];
  },
};
