import { READING_FIELDS } from "../../reading/fields";
import { mayStandUnread } from "../../reading/may-stand-unread";
import { sheetRule } from "../rule";

/** No column says how much alcohol was used. */
export const alcoholNotInSheet = sheetRule({
  id: "alcohol-not-in-sheet",
  weight: "doubt",
  touchesEveryTest: true,
  needs: [],
  needsOneOf: READING_FIELDS,
  says: ["alcohol-not-in-sheet"],
  basis:
    "Without the amount of alcohol no correction can be applied; from 2.5 pt (40 fl oz, 1.2 L) on the air is then stated too high (ASTM C173 Table 1 as reproduced in a meter maker's manual, 2019).",
  look({ all: rows }, sheet) {
    const tested = rows.some(({ blank }) => !blank);
    const lacking = !sheet.has("alcohol") && !mayStandUnread(sheet, "alcohol");
    return tested && lacking ? [{ record: null, field: null }] : [];
  },
});
