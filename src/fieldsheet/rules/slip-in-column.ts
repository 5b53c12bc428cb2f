import { columnSlipMessages } from "../../messages/english/column-slips";
import { columnSlips } from "../diagnosis/column-slips";
import { sheetRule } from "../rule";

const SENTENCES = Object.keys(columnSlipMessages) as (keyof typeof columnSlipMessages)[];
const SAYS = ["column-correction-forgotten", ...SENTENCES.slice(1)] as const;

/** A slip that the whole column of results makes: the template's formula is wrong, not each row. */
export const slipInColumn = sheetRule({
  id: "slip-in-column",
  weight: "error",
  needs: ["air"],
  says: SAYS,
  speaksFor: "reported-air-wrong",
  basis:
    "A slip that at least four rows make, and four fifths of all rows in which it would change the number, is that of the column: one cause, told once (our own rule). What the slips are rests on the calculation of ASTM C173 (from memory).",
  look: ({ all: tests }) =>
    columnSlips(tests).map(({ say, of, rows }) => ({
      record: null,
      field: "air" as const,
      say,
      values: { rows: rows.length, of },
      behind: rows,
    })),
});
