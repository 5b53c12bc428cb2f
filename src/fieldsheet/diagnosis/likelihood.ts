import { hasLargeCorrection, isBesideCorrectedRow, isOddForItsUnit } from "./correction-slips";
import { finalIsAverage, finalIsEarlierReading, finalIsRight } from "./reading-slips";
import type { SlipId } from "./slip";
import type { WrongResult } from "./wrong-result";

/** How a slip stands among the others that explain the same number. */
export interface Likelihood {
  readonly slip: SlipId;
  /** Rows for which the entry holds; all when left out. */
  readonly when?: (row: WrongResult) => boolean;
  /** Why it stands where it stands. */
  readonly because: string;
}

/**
 * The slips from the likeliest to the least likely; the first entry that holds for a row counts.
 *
 * What the sheet itself shows goes first. Then the rarer the rows in which a slip can happen at all,
 * the higher it stands: where it can happen and fits the number exactly, that is seldom chance, while
 * a slip that can happen in every row fits many numbers by chance ("our own judgement").
 */
export const LIKELIHOOD: readonly Likelihood[] = [
  {
    slip: "first-reading-used",
    when: finalIsEarlierReading,
    because: "The sheet's own final reading is an earlier one, so the result was taken from it.",
  },
  {
    slip: "readings-averaged",
    when: finalIsAverage,
    because: "The sheet's own final reading is the average, so the result was taken from it.",
  },
  {
    slip: "recorded-final-used",
    because: "The sheet's own final reading is wrong, and the result follows from it.",
  },
  {
    slip: "unit-mistaken",
    when: isOddForItsUnit,
    because: "The amount of alcohol is odd in the unit that it is recorded in.",
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
    when: isBesideCorrectedRow,
    because: "The amount lies beside a row of the table that has a correction.",
  },
  {
    slip: "correction-forgotten",
    when: finalIsRight,
    because: "The right final reading was known, so the slip came after it.",
  },
  {
    slip: "correction-forgotten",
    when: hasLargeCorrection,
    because: "Few tests need so much alcohol, and without its correction every result is wrong.",
  },
  { slip: "correction-added", because: "As before, but it takes looking the correction up." },
  {
    slip: "first-reading-used",
    when: (row) => !finalIsRight(row),
    because: "Only a test whose readings differ can show it.",
  },
  {
    slip: "rounded-to-other-step",
    because: "It can happen in every row, and a half percent is often chance.",
  },
  {
    slip: "readings-averaged",
    when: (row) => !finalIsRight(row),
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
  return LIKELIHOOD.findIndex((entry) => entry.slip === slip && (entry.when?.(row) ?? true));
}
