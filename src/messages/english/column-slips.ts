import type { Words, WriteNumber } from "../sentence";

type Rows = Words<"rows" | "of">;

const mend = "Mend the formula of the column, or see how it was worked out.";

/** Sentences about a slip that a whole column makes, as a template with a wrong formula does. */
export const columnSlipMessages = {
  "column-correction-forgotten": ({ rows, of }: Rows, n: WriteNumber) =>
    `${rows} of ${of} rows with alcohol to correct for, from ${n("2.5")} pt (40 oz, ${n("1.2")} L) on, leave out the correction. ${mend}`,
  "column-correction-added": ({ rows, of }: Rows, n: WriteNumber) =>
    `${rows} of ${of} rows with alcohol to correct for, from ${n("2.5")} pt (40 oz, ${n("1.2")} L) on, add the correction, which is to be subtracted. ${mend}`,
  "column-factor-subtracted": ({ rows, of }: Rows) =>
    `${rows} of ${of} rows with an aggregate correction factor subtract it. It belongs to the pressure method only. ${mend}`,
  "column-cups-forgotten": ({ rows, of }: Rows) =>
    `${rows} of ${of} rows with calibrated cups leave them out. ${mend}`,
  "column-cups-counted-twice": ({ rows, of }: Rows) =>
    `${rows} of ${of} rows with calibrated cups add them twice. ${mend}`,
  "column-cups-subtracted": ({ rows, of }: Rows) =>
    `${rows} of ${of} rows with calibrated cups subtract them. ${mend}`,
  "column-first-reading-used": ({ rows, of }: Rows) =>
    `${rows} of ${of} rows whose readings differ take an earlier reading in place of the final one. ${mend}`,
  "column-readings-averaged": ({ rows, of }: Rows) =>
    `${rows} of ${of} rows whose readings differ average them; the final reading counts alone. ${mend}`,
  "column-rounded-otherwise": ({ rows, of }: Rows, n: WriteNumber) =>
    `${rows} of ${of} rows whose result lies between the steps are not rounded to the nearest ${n("0.25")} %, half to the even step. ${mend}`,
} as const;
