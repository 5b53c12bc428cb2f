import { MEASURE_MARK } from "../../acceptance/alcohol-steps";
import { isIssue } from "../../measure/issue";
import { exact } from "../../measure/rounding";
import {
  alcoholCorrection,
  CORRECTION_TABLE,
  LEAST_CORRECTED,
  type AlcoholAmount,
} from "../../methods/volumetric-air/alcohol-correction";
import { GRADUATION } from "../../methods/volumetric-air/meter-reading";
import { reportedFrom, type Slip } from "./slip";
import type { WrongResult } from "./wrong-result";

/** The first correction in the table, which subtracts nothing in the rows before. */
const LEAST_CORRECTION = CORRECTION_TABLE.find(({ subtract }) => subtract > 0)!.subtract;

const UNITS = ["pt", "oz", "L"] as const;

export const correctionForgotten: Slip = {
  id: "correction-forgotten",
  gives(row) {
    if (row.subtracted === 0) return [];
    return [{ air: reportedFrom(row, { subtracted: 0 }), values: { subtracted: row.subtracted } }];
  },
};

export const correctionAdded: Slip = {
  id: "correction-added",
  gives(row) {
    if (row.subtracted === 0) return [];
    const air = reportedFrom(row, { subtracted: -row.subtracted });
    return [{ air, values: { subtracted: row.subtracted } }];
  },
};

/** The table's first correction, taken although the amount is below the least that is corrected for. */
export const correctionNotDue: Slip = {
  id: "correction-not-due",
  gives(row) {
    const { alcohol } = row;
    if (!alcohol || alcohol.amount <= 0 || !isUnderLeast(alcohol)) return [];
    const air = reportedFrom(row, { subtracted: LEAST_CORRECTION });
    return [{ air, values: { subtracted: LEAST_CORRECTION, ...alcohol } }];
  },
};

/** The correction looked up in the column of another unit. */
export const unitMistaken: Slip = {
  id: "unit-mistaken",
  gives(row) {
    const { alcohol } = row;
    if (!alcohol) return [];
    const { amount, unit } = alcohol;
    return UNITS.filter((other) => other !== unit).flatMap((other) => {
      const correction = alcoholCorrection({ amount, unit: other });
      if (isIssue(correction)) return [];
      const subtracted = correction.subtract;
      return [
        { air: reportedFrom(row, { subtracted }), values: { amount, unit, other, subtracted } },
      ];
    });
  },
};

/** Subtracting what belongs to the pressure method. */
export const aggregateFactorSubtracted: Slip = {
  id: "aggregate-factor-subtracted",
  gives(row) {
    const { aggregateFactor: factor } = row;
    if (!factor) return [];
    const air = reportedFrom(row, { subtracted: exact(row.subtracted + factor) });
    return [{ air, values: { factor } }];
  },
};

/** Whether the amount lies past the last row that subtracts nothing, yet below the least corrected. */
export function isBesideCorrectedRow({ alcohol }: WrongResult): boolean {
  if (!alcohol || !isUnderLeast(alcohol)) return false;
  const lastWithout = CORRECTION_TABLE.filter(({ subtract }) => subtract === 0).at(-1)!;
  return alcohol.amount > lastWithout[alcohol.unit];
}

/** Whether the correction is a graduation of the neck or more, so that it changes every result. */
export function hasLargeCorrection({ subtracted }: WrongResult): boolean {
  return subtracted >= GRADUATION;
}

/** Whether an amount is odd in its unit: under the table's least, or between the marks of a measure. */
export function isOddForItsUnit({ alcohol }: WrongResult): boolean {
  if (!alcohol) return false;
  const { amount, unit } = alcohol;
  const marks = exact(amount / MEASURE_MARK[unit]);
  return amount < CORRECTION_TABLE[0]![unit] || !Number.isInteger(marks);
}

function isUnderLeast({ amount, unit }: AlcoholAmount): boolean {
  return amount < LEAST_CORRECTED[unit];
}
