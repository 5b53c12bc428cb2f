import type { Rule } from "../rule";

/** No column says how much alcohol was used. */
export const alcoholNotInSheet: Rule = {
  id: "alcohol-not-in-sheet",
  weight: "doubt",
  needs: [],
  basis:
    "Without the amount of alcohol no correction can be applied; from 2.5 pt (40 fl oz, 1.2 L) on the air is then stated too high (ASTM C173 Table 1 as reproduced in a meter maker's manual, 2019).",
  lookAcross(rows, sheet) {
    const tested = rows.some(({ blank }) => !blank);
    return tested && !sheet.has("alcohol") ? [{ row: null, field: null }] : [];
  },
};
