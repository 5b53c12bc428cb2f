import { hasLargeCorrection, isBesideCorrectedRow, isOddForItsUnit } from "./correction-slips";
import { finalIsAverage, finalIsEarlierReading, finalIsRight } from "./reading-slips";
import type { SlipId } from "./slip";
import type { WrongResult } from "./wrong-result";

/** What a row must be like for an entry to hold, in words and as a test. */
interface Condition {
  readonly is: string;
  readonly holds: (row: WrongResult) => boolean;
}

const FINAL_IS_EARLIER: Condition = {
  is: "the sheet's final reading is an earlier one",
  holds: finalIsEarlierReading,
};
const FINAL_IS_AVERAGE: Condition = {
  is: "the sheet's final reading is the average",
  holds: finalIsAverage,
};
const FINAL_IS_RIGHT: Condition = { is: "the sheet's final reading is right", holds: finalIsRight };
const FINAL_IS_NOT_RIGHT: Condition = {
  is: "the sheet has no final reading, or a wrong one",
  holds: (row) => !finalIsRight(row),
};
const AMOUNT_IS_ODD: Condition = {
  is: "the amount of alcohol lies under the table's least or between the marks of a measure",
  holds: isOddForItsUnit,
};
const BESIDE_A_CORRECTED_ROW: Condition = {
  is: "the amount lies between 2 pt (32 oz, 0.9 L) and 2.5 pt (40 oz, 1.2 L)",
  holds: isBesideCorrectedRow,
};
const CORRECTION_IS_LARGE: Condition = {
  is: "the correction is 0.25 % or more",
  holds: hasLargeCorrection,
};

/** How a slip stands among the others that explain the same number. */
export interface Likelihood {
  readonly slip: SlipId;
  /** Rows for which the entry holds; all when left out. */
  readonly when?: Condition;
  /** Why it stands where it stands. */
  readonly because: string;
}

/**
 * The slips from the likeliest to the least likely; the first entry that holds for a row counts.
 *
 * What the sheet itself shows goes first. Then the rarer the rows in which a slip can happen at all,
 * the higher it stands: where it can happen and fits the number exactly, that is seldom chance, while
 * a slip that can happen in every row fits many numbers by chance. The order is our own judgement,
 * set with simulated records in view.
 */
export const LIKELIHOOD: readonly Likelihood[] = [
  {
    slip: "first-reading-used",
    when: FINAL_IS_EARLIER,
    because: "The result was taken from what the sheet says.",
  },
  {
    slip: "readings-averaged",
    when: FINAL_IS_AVERAGE,
    because: "The result was taken from what the sheet says.",
  },
  {
    slip: "recorded-final-used",
    because: "The result was taken from what the sheet says, which was never read.",
  },
  {
    slip: "unit-mistaken",
    when: AMOUNT_IS_ODD,
    because: "Nobody measures such an amount in the unit that it is recorded in.",
  },
  { slip: "cups-forgotten", because: "Few tests need cups, and whole percents are seldom chance." },
  { slip: "cups-counted-twice", because: "As before, but it takes more than forgetting." },
  { slip: "cups-subtracted", because: "As before, but against the sense of the cups." },
  {
    slip: "aggregate-factor-subtracted",
    because: "Few sheets of this method hold such a factor, and it is there to be subtracted.",
  },
  {
    slip: "correction-not-due",
    when: BESIDE_A_CORRECTED_ROW,
    because: "The next row of the table has a correction, and is easily taken.",
  },
  {
    slip: "correction-forgotten",
    when: FINAL_IS_RIGHT,
    because: "The readings were understood, so the slip came after them.",
  },
  {
    slip: "correction-forgotten",
    when: CORRECTION_IS_LARGE,
    because: "Few tests need so much alcohol, and without its correction every result is wrong.",
  },
  { slip: "correction-added", because: "As before, but it takes looking the correction up." },
  {
    slip: "first-reading-used",
    when: FINAL_IS_NOT_RIGHT,
    because: "Only a test whose readings differ can show it.",
  },
  {
    slip: "rounded-to-other-step",
    because: "It can happen in every row, and a half percent is often chance.",
  },
  {
    slip: "readings-averaged",
    when: FINAL_IS_NOT_RIGHT,
    because:
      "The average of two readings that agree rounds to one of them, so looking into the wrong column explains it more simply.",
  },
  {
    slip: "correction-forgotten",
    because: "Less than a graduation: rounding alone may make the difference.",
  },
  { slip: "unit-mistaken", because: "The amount is an ordinary one in its own unit." },
  {
    slip: "correction-not-due",
    because:
      "The table subtracts nothing for so little alcohol; somebody must have thought it did.",
  },
  {
    slip: "first-reading-used",
    because: "The right final reading stands beside it, so somebody knew better.",
  },
  {
    slip: "readings-averaged",
    because: "The right final reading stands beside it, so somebody knew better.",
  },
  { slip: "digits-swapped", because: "It can happen in every row and leads to any number." },
];

/** Place of a slip among the others for a row; 0 is the likeliest. */
export function likelihoodOf(slip: SlipId, row: WrongResult): number {
  return LIKELIHOOD.findIndex((entry) => entry.slip === slip && (entry.when?.holds(row) ?? true));
}
